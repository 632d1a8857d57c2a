// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <vector>

namespace drawercast::shape {

/// A shape that is quickly cut and sanded, and holds the whole of an outline.
struct EasyShape {
    enum class Kind { rectangle, turned_rectangle, two_rectangles, disc };
    Kind kind = Kind::rectangle;
    Polygon polygon;     ///< where the outline is
    double more_mm2 = 0; ///< area beyond the outline's own: foam that is lost to the pocket
    double reach_mm = 0; ///< how far it reaches past the outline at most: what a wall may lose there
    bool operator==(const EasyShape&) const = default;
};

/// The least upright rectangle around an outline; the least turned one, two rectangles side by side, and the
/// least disc where each saves at least 2 % of the upright one's area over those before it (a disc always
/// where it is the least of all); least area first. Rectangles and disc are exact for the traced outline
/// (rotating calipers; the smallest enclosing circle by Welzl); the cut between two rectangles is the best
/// of the outline's own corners and 64 even steps, each way.
std::vector<EasyShape> easy_shapes(const Contour& contour);

} // namespace drawercast::shape
