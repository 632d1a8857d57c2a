// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/gap.h"

#include "shape/boxes.h"
#include "shape/near_sides.h"

namespace drawercast::shape {
namespace {

/// Where one core lies inside the other: a vertex of the inner that the outer holds.
bool holds_whole(const Contour& outer, const Box& outer_box, const Contour& inner, const Box& inner_box) {
    return holds(outer_box, inner_box) && holds(outer.core, inner.core[0]);
}

} // namespace

Gap gap_between(const Contour& a, const Box& box_a, const Contour& b, const Box& box_b, double cutoff_mm) {
    const double dx = std::max({0.0, box_a.min.x - box_b.max.x, box_b.min.x - box_a.max.x});
    const double dy = std::max({0.0, box_a.min.y - box_b.max.y, box_b.min.y - box_a.max.y});
    if (dx * dx + dy * dy > cutoff_mm * cutoff_mm) return {};
    const Box core_a = box_a.grown(-a.round_mm);
    const Box core_b = box_b.grown(-b.round_mm);
    if (holds_whole(b, core_b, a, core_a)) return {0, a.core[0], a.core[0]};
    if (holds_whole(a, core_a, b, core_b)) return {0, b.core[0], b.core[0]};
    const double round = a.round_mm + b.round_mm;
    const NearSides near = nearest_sides(a.core, core_a, b.core, cutoff_mm + round);
    if (!near.found) return {};
    return gap_from(near, a.round_mm, b.round_mm);
}

Gap gap_between(const Contour& a, const Contour& b, double cutoff_mm) {
    return gap_between(a, bounds(a), b, bounds(b), cutoff_mm);
}

} // namespace drawercast::shape
