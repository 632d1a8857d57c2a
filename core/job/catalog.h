// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <vector>

/// What the program knows without a job: invented, generic foams, boards, stiffeners and closures
/// (resources/catalog, built in at compile time), and objects whose sizes are published. Choosing one copies
/// it into the job.
namespace drawercast::job {

const std::vector<Foam>& builtin_foams(); ///< soft, medium, firm
const std::vector<Board>& builtin_boards();
const std::vector<Stiffener>& builtin_stiffeners();
const std::vector<Closure>& builtin_closures();
/// What the shop has: its own list, or the built-in one where it has none.
const std::vector<Board>& boards_of(const Shop& shop);
const std::vector<Stiffener>& stiffeners_of(const Shop& shop);
const std::vector<Closure>& closures_of(const Shop& shop);
const std::vector<Object>& standard_objects(); ///< with the source of their sizes in the note

/// A job to start from: medium foam, no object, one drawer of that inside size.
struct DrawerSize {
    double width_mm = 480;
    double depth_mm = 360;
    double clear_height_mm = 90;
    double insert_mm = 60;
};
Job new_job(const DrawerSize& size);

} // namespace drawercast::job
