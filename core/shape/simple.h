// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <optional>

namespace drawercast::shape {

/// Vertices nearer than this are one, and sides nearer than this touch, mm: twice what rounding to the grid
/// (grid_mm) can move two sides towards each other, so that a ring found simple here is simple on the grid
/// too.
inline constexpr double apart_mm = 0.002;

/// The ring without repeated vertices and spikes (out and back on the same line). May be left with fewer than
/// three.
Ring tidied(const Ring& ring);

/// Where a tidied ring meets itself, and how.
struct Meeting {
    Vec at;
    bool crosses = false; ///< else two sides touch or run within apart_mm of each other
};
/// The first meeting in a fixed order, or nothing: the ring is simple.
std::optional<Meeting> first_meeting(const Ring& ring);

} // namespace drawercast::shape
