// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

/// What upright boxes hold, and boxes elsewhere.
namespace drawercast::shape {

/// Whether all of `inner` lies in `outer`; its edges count.
constexpr bool holds(const Box& outer, const Box& inner) {
    return inner.min.x >= outer.min.x && inner.max.x <= outer.max.x && inner.min.y >= outer.min.y &&
           inner.max.y <= outer.max.y;
}

/// Whether `p` lies in the box; its edges count.
constexpr bool holds(const Box& box, Vec p) {
    return p.x >= box.min.x && p.x <= box.max.x && p.y >= box.min.y && p.y <= box.max.y;
}

constexpr Box moved(const Box& box, Vec by) { return {box.min + by, box.max + by}; }

} // namespace drawercast::shape
