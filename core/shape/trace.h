// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <optional>

namespace drawercast::shape {

/// Unit vector to the right of the way from one point to another: outward of a counter-clockwise ring's side.
Vec outward(Vec from, Vec to);

/// How many chords an arc of `angle` (radians, > 0) and `radius` needs to stay within `sagitta_mm`: at least
/// one, and at least one each quarter turn.
std::size_t chords_for(double angle, double radius_mm, double sagitta_mm);

/// The ring moved outward by `by_mm` (inward where < 0), side by side in closed form: arcs at the corners
/// that open, the sides' meeting point at those that close. Nothing where a side would vanish. The caller
/// makes sure that no two far sides meet (first_meeting, simple.h).
std::optional<Ring> moved_sides(const Ring& ring, double by_mm, double sagitta_mm = chord_sagitta_mm);

} // namespace drawercast::shape
