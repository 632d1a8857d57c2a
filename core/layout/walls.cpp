// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/walls.h"

#include "shape/boxes.h"
#include "shape/segments.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace drawercast::layout {

namespace {

using shape::Box;
using shape::Ring;
using shape::Vec;

constexpr double infinite = std::numeric_limits<double>::infinity();

/// A wall starts this far outside the boundary: two hollows drawn flush leave no wall to speak of.
constexpr double skin_mm = 0.001;

/// A ray this nearly along a side (sine of the angle) slides by it instead of ending there.
constexpr double along_side = 1e-9;

/// The part of a ray within one slab of a box, as parameters; empty (from > to) where it misses.
std::pair<double, double> within_slab(double from, double along, double low, double high) {
    if (along == 0)
        return from < low || from > high ? std::pair(infinite, -infinite) : std::pair(-infinite, infinite);
    return std::minmax((low - from) / along, (high - from) / along);
}

bool meets(const Box& box, Vec p, Vec along, double before) {
    const auto [x_in, x_out] = within_slab(p.x, along.x, box.min.x, box.max.x);
    const auto [y_in, y_out] = within_slab(p.y, along.y, box.min.y, box.max.y);
    return std::max({x_in, y_in, 0.0}) <= std::min({x_out, y_out, before});
}

/// Distance from `p` along the unit vector `along` to the ring, if less than `before`.
double distance_along(const Ring& ring, Vec p, Vec along, double before) {
    double nearest = before;
    Vec a = ring.back();
    for (const Vec b : ring) {
        const Vec side = b - a;
        const double scale = cross(along, side);
        if (std::abs(scale) > along_side * length(side)) {
            const double distance = cross(a - p, side) / scale;
            const double part = cross(a - p, along) / scale;
            if (part >= 0 && part <= 1 && distance > 0 && distance < nearest) nearest = distance;
        }
        a = b;
    }
    return nearest;
}

} // namespace

double Squeeze::toward(Vec normal) const {
    const bool end = std::abs(dot(normal, long_axis)) > std::sqrt(0.5);
    return std::max(0.0, end ? end_mm : side_mm);
}

Walls::Walls(const std::vector<std::shared_ptr<const PlacedPocket>>& pockets,
             const std::vector<std::vector<Squeeze>>& squeezes, const Insert* insert) {
    const auto add = [this](const shape::Contour& contour, double depth_mm, const Squeeze& squeeze) {
        Ring ring = shape::traced(contour);
        const Box box = shape::bounds(ring);
        faces_.push_back({std::move(ring), box, depth_mm, squeeze});
    };
    for (std::size_t i = 0; i < pockets.size(); ++i)
        for (std::size_t j = 0; j < pockets[i]->cuts.size(); ++j)
            add(pockets[i]->cuts[j].outline.contour, pockets[i]->cuts[j].depth_mm, squeezes[i][j]);
    if (!insert) return;
    for (const auto& edge : insert->edges) add(edge.contour, 0, {});
}

Beside Walls::beside(Vec p, Vec normal, double depth_mm) const {
    const Vec start = p + normal * skin_mm;
    double open_mm = 0; // how deep other hollows already open the foam at the very boundary
    double nearest = infinite;
    const Face* far = nullptr;
    for (const Face& face : faces_) {
        if (!meets(face.box, start, normal, nearest)) continue;
        if (face.depth_mm > 0 && shape::holds(face.box, start) && shape::holds(face.ring, start)) {
            open_mm = std::max(open_mm, face.depth_mm);
            continue; // below it there is foam: it ends nothing
        }
        const double distance = distance_along(face.ring, start, normal, nearest);
        if (!(distance < nearest)) continue;
        nearest = distance;
        far = &face;
    }
    const double height = std::max(0.0, depth_mm - open_mm);
    return {height, nearest + skin_mm, far ? far->squeeze.toward(normal) : 0.0};
}

} // namespace drawercast::layout
