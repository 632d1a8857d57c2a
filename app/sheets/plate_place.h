// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/taken.h"

#include <optional>

namespace drawercast::sheets {

/// How far from its place a plate may stand, in steps of step_px.
struct PlateReach {
    int steps = 24;
    bool over_pockets = true; ///< where no free face is left
};

/// Where a plate of `size` stands near `at` (device units; `px` a logical one): on the face, clear of words
/// and plates, its leader crossing neither them nor other leaders; clear of pockets if it can be.
std::optional<Box> plate_place(Vec at, Vec size, const Taken& taken, double px, PlateReach reach);

/// Whether a plate may stand there with its leader from `at`.
bool may_stand(Vec at, const Box& place, const Taken& taken, double px, bool over_pockets);

/// Where the leader from `at` meets the plate.
Vec leader_end(Vec at, const Box& place);

} // namespace drawercast::sheets
