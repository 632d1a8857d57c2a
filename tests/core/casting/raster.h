// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/cavity.h"
#include "shape/contour.h"

#include <algorithm>
#include <cmath>
#include <limits>

/// A mold looked at point by point: slow, and nothing in common with how casting does it. The points are
/// those of the sequence i·(1/ρ, 1/ρ²) mod 1, ρ³ = ρ + 1, which leaves no direction in step with a wall as a
/// grid would.
namespace drawercast::casting::raster {

inline double distance_to_side(shape::Vec p, shape::Vec a, shape::Vec b) {
    const shape::Vec d = b - a;
    const double t = dot(d, d) > 0 ? std::clamp(dot(p - a, d) / dot(d, d), 0.0, 1.0) : 0;
    return length(p - (a + d * t));
}

inline bool inside(const shape::Ring& ring, shape::Vec p) {
    bool in = false;
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
        if ((ring[i].y > p.y) != (ring[j].y > p.y) &&
            p.x < (ring[j].x - ring[i].x) * (p.y - ring[i].y) / (ring[j].y - ring[i].y) + ring[i].x)
            in = !in;
    return in;
}

/// 0 inside, else how far outside.
inline double distance(const shape::Contour& contour, shape::Vec p) {
    const auto& core = contour.core;
    if (core.size() > 2 && inside(core, p)) return 0;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < core.size(); ++i)
        least = std::min(least, distance_to_side(p, core[i], core[(i + 1) % core.size()]));
    return std::max(0.0, least - contour.round_mm);
}

inline bool in_opening(const layout::Insert& insert, shape::Vec p) {
    if (distance(insert.edges[0].contour, p) > 0) return false;
    for (std::size_t i = 1; i < insert.edges.size(); ++i)
        if (distance(insert.edges[i].contour, p) == 0) return false;
    return true;
}

/// Height of the block over `p`, which lies inside its outline.
inline double block_height(const layout::Cut<shape::InDrawer>& cut, shape::Vec p, double insert_mm) {
    if (!cut.round) return std::min(cut.depth_mm, insert_mm);
    const auto& core = cut.outline.contour.core;
    const shape::Vec along = (core[1] - core[0]) * (1 / length(core[1] - core[0]));
    const double off = cross(along, p - (core[0] + core[3]) * 0.5);
    const double r = cut.round->radius_mm;
    return std::min(insert_mm, cut.round->axis_mm + std::sqrt(std::max(0.0, r * r - off * off)));
}

inline Cavity cavity(const CavityIn& in, int points) {
    const layout::Insert& insert = *in.insert;
    Cavity out;
    const auto look_at = [&](shape::Vec p) {
        if (!in_opening(insert, p)) return;
        out.insert_area_mm2 += 1;
        double block = 0;
        double clay = 0;
        for (const CavityPocket& one : in.pockets)
            for (std::size_t i = 0; i < one.pocket->cuts.size(); ++i) {
                const auto& cut = one.pocket->cuts[i];
                const double r = std::min(in.fillet_mm, std::min(cut.depth_mm, insert.thickness_mm));
                if (!near(one.pocket->boxes[i], shape::Box{p, p}, r)) continue;
                const double d = distance(cut.outline.contour, p);
                if (d == 0)
                    block = std::max(block, block_height(cut, p, insert.thickness_mm));
                else if (d < r)
                    clay = std::max(clay, r - std::sqrt(d * (2 * r - d)));
            }
        out.blocks_mm3 += block;
        if (block == 0) out.fillet_mm3 += clay;
        if (block == 0) out.open_area_mm2 += 1;
    };
    const double root = 1.3247179572447460;
    const shape::Vec step{1 / root, 1 / (root * root)};
    shape::Vec at{0.5, 0.5};
    for (int i = 0; i < points; ++i) {
        at = at + step;
        at = {at.x - std::floor(at.x), at.y - std::floor(at.y)};
        look_at(insert.box.min + shape::Vec{at.x * insert.box.width(), at.y * insert.box.height()});
    }
    const double each = insert.box.width() * insert.box.height() / points;
    for (double* sum : {&out.insert_area_mm2, &out.blocks_mm3, &out.fillet_mm3, &out.open_area_mm2})
        *sum *= each;
    return out;
}

} // namespace drawercast::casting::raster
