// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include <algorithm>
#include <cmath>
#include <vector>

/// The floor: the least code that answers the question for bare rings. Squared distance of segments with box
/// pruning and a cut-off; no rounds, no places, no overlaps, no words. What ours takes over this is the price
/// of the rest.
namespace drawercast::bench {

using shape::Box;
using shape::Vec;

inline Box box_of(const std::vector<Vec>& ring) {
    Box box;
    for (const Vec p : ring) box.add(p);
    return box;
}

inline double squared_to_segment(Vec p, Vec a, Vec b) {
    const Vec along = b - a;
    const double part = std::clamp(dot(p - a, along) / dot(along, along), 0.0, 1.0);
    const Vec d = p - (a + along * part);
    return dot(d, d);
}

inline double squared_between(const Box& a, const Box& b) {
    const double dx = std::max({0.0, a.min.x - b.max.x, b.min.x - a.max.x});
    const double dy = std::max({0.0, a.min.y - b.max.y, b.min.y - a.max.y});
    return dx * dx + dy * dy;
}

/// Distance of two rings that do not cross, or `cutoff` where it is not less.
inline double hand_distance(const std::vector<Vec>& a, const Box& box_a, const std::vector<Vec>& b,
                            double cutoff) {
    double best = cutoff * cutoff;
    static thread_local std::vector<std::pair<Vec, Vec>> close; // sides of b near a
    close.clear();
    const auto side_box = [](Vec p, Vec q) {
        return Box{{std::min(p.x, q.x), std::min(p.y, q.y)}, {std::max(p.x, q.x), std::max(p.y, q.y)}};
    };
    Box close_box;
    for (std::size_t j = 0, k = b.size() - 1; j < b.size(); k = j++) {
        const Box box = side_box(b[k], b[j]);
        if (squared_between(box, box_a) >= best) continue;
        close.emplace_back(b[k], b[j]);
        close_box.add(box);
    }
    if (close.empty()) return cutoff;
    for (std::size_t i = 0, h = a.size() - 1; i < a.size(); h = i++) {
        const Box box = side_box(a[h], a[i]);
        if (squared_between(box, close_box) >= best) continue;
        for (const auto& [p, q] : close) {
            if (squared_between(box, side_box(p, q)) >= best) continue;
            best = std::min({best, squared_to_segment(a[h], p, q), squared_to_segment(a[i], p, q),
                             squared_to_segment(p, a[h], a[i]), squared_to_segment(q, a[h], a[i])});
        }
    }
    return std::sqrt(best);
}

} // namespace drawercast::bench
