// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"
#include "stock/buy.h"

#include <array>
#include <optional>
#include <vector>

namespace drawercast::plan {

/// The boards of a drawer's mold and what else its plate takes, as plain values.
struct PlateParts {
    job::Board board;
    job::Board box_board;
    std::optional<job::Stiffener> stiffener;
    std::vector<double> stiffener_lengths_mm;
    std::vector<stock::ClosureUse> closures; ///< of the plate and at bearers' ends; none: not known yet
    std::optional<job::Stiffener> bearer;
    std::vector<double> bearer_lengths_mm;
    std::array<std::vector<double>, 4> foot_mm{}; ///< as stock::BoxIn; none: not known yet
};

/// As the plate was worked out; else as the maker set it, else the first board that takes a screw in its
/// edge.
PlateParts plate_parts(const job::Job& job, const DrawerPlan& drawer);

} // namespace drawercast::plan
