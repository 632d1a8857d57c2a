// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include <optional>
#include <string>

namespace drawercast::plan {

/// How the pocket is moved to the nearest place where it has neither wall nor edge to mend or to look at, the
/// others standing still; nothing where there is none within `farthest_mm`. Rings of `step_mm` in 64
/// directions, the first ring that has a place; then shortened along its direction to 0.1 mm.
std::optional<shape::Vec> way_to_nearest_place(const job::Job& job, const job::Drawer& drawer,
                                               const DrawerPlan& plan, const std::string& subject,
                                               double step_mm, double farthest_mm);

} // namespace drawercast::plan
