// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <vector>

namespace drawercast::casting {

/// A flat shape as closed paths: a point is inside where they wind around it more often counter-clockwise
/// than clockwise. Paths may cross themselves and each other, so that a union is just the paths of its parts.
struct Footprint {
    std::vector<shape::Ring> paths;
    shape::Box box;

    void add(shape::Ring path);
};

/// A closed path around all points within `by_mm` ≥ 0 of `contour`, counter-clockwise. Each side moves
/// outward; an arc joins them at a convex corner, a detour over the corner itself at a reflex one. Where far
/// sides meet (slots, inlets) the path crosses itself, but winds around the right points: the convolution of
/// an outline and a disc winds around each point of their Minkowski sum at least once and around no other, as
/// long as the outline has no holes. Source: Guibas, Ramshaw and Stolfi (1983), A kinetic framework for
/// computational geometry, FOCS 24, 100–111. Where the moved sides of a reflex corner meet on their own near
/// halves, the path turns there instead, which leaves out a loop that winds around what both sides cover
/// anyway; arcs that curve inward are many such corners. Arcs are chords near `sagitta_mm` from the arc, with
/// their corners moved out so that the area is the arc's.
shape::Ring path_around(const shape::Contour& contour, double by_mm, double sagitta_mm);

} // namespace drawercast::casting
