// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <optional>
#include <span>

/// Points, segments and rings: the small change of every distance in this folder.
namespace drawercast::shape {

/// Below this two outlines touch: what rounding leaves of a distance that is 0 on paper, mm.
inline constexpr double touching_mm = 1e-9;

/// The point of the segment a–b nearest to `p`.
inline Vec nearest_on(Vec p, Vec a, Vec b) {
    const Vec along = b - a;
    const double whole = dot(along, along);
    const double part = dot(p - a, along);
    if (!(part > 0)) return a;
    if (part >= whole) return b;
    return a + along * (part / whole);
}

/// Where the segments a–b and c–d cross, touching ends not promised. Nothing where they run parallel.
inline std::optional<Vec> crossing(Vec a, Vec b, Vec c, Vec d) {
    const Vec ab = b - a;
    const Vec cd = d - c;
    const double side_c = cross(ab, c - a);
    const double side_d = cross(ab, d - a);
    if ((side_c > 0) == (side_d > 0)) return std::nullopt;
    const double side_a = cross(cd, a - c);
    const double side_b = cross(cd, b - c);
    if ((side_a > 0) == (side_b > 0)) return std::nullopt;
    return a + ab * (side_a / (side_a - side_b));
}

/// Number of sides of a core: a ring closes, a segment and a point are one side each.
inline std::size_t sides_of(std::span<const Vec> core) { return core.size() < 3 ? 1 : core.size(); }
inline Vec side_end(std::span<const Vec> core, std::size_t i) {
    return core[i + 1 < core.size() ? i + 1 : 0];
}

/// Whether a ring holds `p`; either answer on its boundary. False for cores of fewer than three vertices.
inline bool holds(std::span<const Vec> ring, Vec p) {
    if (ring.size() < 3) return false;
    bool inside = false;
    Vec a = ring.back();
    for (const Vec b : ring) {
        if ((a.y > p.y) != (b.y > p.y) && (cross(b - a, p - a) > 0) == (b.y > a.y)) inside = !inside;
        a = b;
    }
    return inside;
}

/// Whether a ring holds `p`; of a point on its boundary, whichever way round the ring goes: yes on sides to
/// the left and in front, no on those to the right and at the back. So of two rings that share a side one
/// alone holds a point of it, and even-odd over several rings answers as over the area they bound.
inline bool holds_half_open(std::span<const Vec> ring, Vec p) {
    bool inside = false;
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        const Vec a = ring[i], b = ring[j];
        if ((a.y > p.y) != (b.y > p.y) && p.x < (b.x - a.x) * (p.y - a.y) / (b.y - a.y) + a.x)
            inside = !inside;
    }
    return inside;
}

/// The point of a core's boundary nearest to `p`.
inline Vec nearest_on_core(std::span<const Vec> core, Vec p) {
    Vec best = core[0];
    double best2 = dot(best - p, best - p);
    for (std::size_t i = 0; i < sides_of(core); ++i) {
        const Vec q = nearest_on(p, core[i], side_end(core, i));
        const double d2 = dot(q - p, q - p);
        if (d2 < best2) {
            best2 = d2;
            best = q;
        }
    }
    return best;
}

} // namespace drawercast::shape
