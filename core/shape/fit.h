// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "shape/contour.h"

namespace drawercast::shape {

/// How much larger a pocket is than its object, mm per side; negative squeezes.
struct Fit {
    double side_mm = 0;
    double end_mm = 0; ///< at the two ends of the long axis
    bool operator==(const Fit&) const = default;
};

/// The pocket's outline for an object's. The family is kept: rectangle (w + 2·end, h + 2·side along its long
/// axis; a round corner becomes max(0, ρ + side), a sharp one stays sharp), circle (side only), capsule. A
/// free outline grows with round joins; shrinking keeps convex corners sharp and makes reflex corners arcs;
/// then it is stretched along the long axis of its bounding box so that the ends get `end`. Refused
/// ("fit-vanishes") where nothing or more than one piece is left.
Expected<Contour> fitted(const Given& given, const Fit& fit);

} // namespace drawercast::shape
