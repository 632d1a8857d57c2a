// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/gap.h"
#include "shape/near_sides.h"
#include "shape/stick_out.h"

namespace drawercast::shape {
namespace {

/// Distance of `p` from a convex core's boundary, > 0 inside, with the nearest point.
struct Depth {
    double mm = 0;
    Vec on_core;
};
Depth depth_in(std::span<const Vec> core, Vec p) {
    const Vec on = nearest_on_core(core, p);
    const double mm = length(p - on);
    return {holds(core, p) ? mm : -mm, on};
}

/// For a convex outer the depth is concave, so the worst of the inner core is a vertex: exact, radii
/// included.
Gap worst_vertex(const Contour& inner, const Contour& outer) {
    Depth worst{any_distance, {}};
    Vec at;
    for (const Vec p : inner.core)
        if (const Depth depth = depth_in(outer.core, p); depth.mm < worst.mm) {
            worst = depth;
            at = p;
        }
    const double apart = std::abs(worst.mm);
    const Vec out = apart > 0 ? (worst.on_core - at) * (1 / worst.mm) : Vec{};
    return {worst.mm - inner.round_mm + outer.round_mm, at + out * inner.round_mm,
            worst.on_core + out * outer.round_mm};
}

Gap settled(Gap gap) {
    if (std::abs(gap.mm) <= touching_mm) gap.mm = 0;
    return gap;
}

} // namespace

Gap gap_inside(const Contour& inner, const Contour& outer, double cutoff_mm) {
    const bool round_outer = convex(outer);
    if (!round_outer && outer.round_mm > 0) return gap_inside(inner, {traced(outer), 0}, cutoff_mm);
    const double limit = std::max(0.0, cutoff_mm + inner.round_mm - outer.round_mm);
    const NearSides near = nearest_sides(outer.core, bounds(outer.core), inner.core, limit);
    const bool center_in = holds(outer.core, inner.core[0]);
    if (!near.found && center_in) return {};
    const double depth = std::sqrt(near.squared) - inner.round_mm + outer.round_mm;
    if (near.found && center_in && near.squared > 0 && depth >= 0) {
        const Vec out = (near.a - near.b) * (1 / std::sqrt(near.squared));
        return settled({depth, near.b + out * inner.round_mm, near.a + out * outer.round_mm});
    }
    if (round_outer) {
        const Gap worst = worst_vertex(inner, outer);
        return worst.mm > cutoff_mm ? Gap{} : settled(worst);
    }
    return settled(stick_out({traced(inner), 0}, outer));
}

} // namespace drawercast::shape
