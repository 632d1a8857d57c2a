// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <limits>

namespace drawercast::shape {

/// The least distance between two outlines and where it is. `mm` is 0 where they touch (within 1e-9 mm),
/// overlap or one holds the other; the points are then one place, in what they share.
struct Gap {
    double mm = std::numeric_limits<double>::infinity();
    Vec a; ///< nearest point on the first outline's boundary
    Vec b; ///< nearest point on the second's
    bool within(double limit) const { return mm <= limit; }
};

inline constexpr double any_distance = std::numeric_limits<double>::infinity();

/// Least distance between two outlines, exact for their cores (core distance − ρ1 − ρ2). Pairs further apart
/// than `cutoff_mm` may answer infinity: in the hot path that is most of them, and saves nearly all the time.
Gap gap_between(const Contour& a, const Contour& b, double cutoff_mm = any_distance);

/// As gap_between for outlines whose boxes the caller keeps.
Gap gap_between(const Contour& a, const Box& box_a, const Contour& b, const Box& box_b, double cutoff_mm);

/// Least distance from the outline `inner` to the boundary of `outer` that should hold it: > 0 inside; 0
/// where it touches; where it sticks out, minus the greatest distance by which its boundary does. Exact where
/// `outer` is convex, or sharp and holds it; else within what the chords of traced() and 1e-6 mm leave. Above
/// `cutoff_mm` may answer infinity.
Gap gap_inside(const Contour& inner, const Contour& outer, double cutoff_mm = any_distance);

/// Least width of the area two overlapping outlines share: by how much one must give way. 0 where they do not
/// overlap. Minimum width of the shared area's convex hull (rotating calipers), largest over its pieces.
double overlap_width(const Contour& a, const Contour& b);

} // namespace drawercast::shape
