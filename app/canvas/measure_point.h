// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

namespace drawercast::app {

/// Where a measurement starts or ends.
struct MeasurePoint {
    enum class On { corner, edge, nothing };
    shape::Vec at; ///< drawer mm
    On on = On::nothing;
    bool operator==(const MeasurePoint&) const = default;
};

/// The point of the drawer plan meant by a pointer: within `reach_mm` the nearest sharp corner or middle of a
/// round outline, else the nearest edge, of pockets, insert, obstructions and drawer; else the pointer
/// itself. In reach a corner wins over an edge however near that is.
MeasurePoint measure_point(const plan::DrawerPlan& plan, shape::Vec pointer, double reach_mm);

} // namespace drawercast::app
