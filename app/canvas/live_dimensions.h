// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <optional>
#include <string>
#include <vector>

namespace drawercast::app {

/// A distance shown while something is moved, drawer mm.
struct LiveDimension {
    shape::Vec from;
    shape::Vec to;
    std::optional<shape::Vec> extended_from; ///< where an extension line to `to` starts, off the middle
};

/// To the nearest edge of the insert each way, along a line that crosses no other pocket (none where there is
/// no such line: another pocket lies between), and to the nearest neighbor, unless a check says that already.
std::vector<LiveDimension> live_dimensions(const plan::DrawerPlan& plan,
                                           const std::vector<std::string>& moving);

} // namespace drawercast::app
