// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"
#include "stock/drawer_stock.h"

#include <optional>

namespace drawercast::plan {

/// A mold other than planned, and what that does to foam and pressure. Mold frame.
struct BuiltFigures {
    casting::Cavity cavity;
    std::optional<casting::Dose> dose;         ///< right for this mold; absent where it is refused
    std::optional<casting::Pressure> pressure; ///< of that dose
    std::optional<double> planned_dose_kpa;    ///< closed pressure if the plan's dose went in
    bool operator==(const BuiltFigures&) const = default;
};

/// What a measured mold holds. Fillers count as planned: the opening grows or shrinks by as much as the box.
/// Walls of different heights count by their mean. Absent where the drawer has no cavity or the foam no
/// profile.
std::optional<BuiltFigures> built_figures(const job::Job& job, const DrawerPlan& drawer,
                                          const job::AsBuilt& built);

/// The last record of that drawer in the job's as_built; nullptr: none.
const job::AsBuilt* last_built(const job::Job& job, const std::string& drawer);

/// The mold as the saw's steps and the boards' sums make it, in the words of a measured one. Bodies cut away
/// where they butt others, and tubes, count as planned.
job::AsBuilt as_cut(const job::Job& job, const DrawerPlan& drawer, const stock::DrawerStock& stock);

} // namespace drawercast::plan
