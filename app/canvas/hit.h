// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <optional>
#include <string>
#include <vector>

namespace drawercast::app {

/// The pocket under a point of the drawer plan, the topmost (last) one; "" where there is none. A pocket
/// counts from `reach_mm` outside its outline on, so that small ones can be got hold of.
std::string pocket_at(const plan::DrawerPlan& drawer, shape::Vec at_mm, double reach_mm);

/// The finger notch of a pocket that a point lies in, off its levels, or whose middle is within `reach_mm`:
/// its number; nothing where there is none.
std::optional<std::size_t> notch_at(const layout::PlacedPocket& pocket, shape::Vec at_mm, double reach_mm);

/// The pockets whose outline lies wholly inside the box, in the job's order.
std::vector<std::string> pockets_inside(const plan::DrawerPlan& drawer, const shape::Box& box);

/// The box around some pockets; empty where none of them stands.
shape::Box box_of(const plan::DrawerPlan& drawer, const std::vector<std::string>& subjects);

} // namespace drawercast::app
