// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/hull.h"

#include <algorithm>

namespace drawercast::shape {

Ring hull_of(Ring points) {
    std::sort(points.begin(), points.end(), [](Vec a, Vec b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    points.erase(std::unique(points.begin(), points.end()), points.end());
    Ring hull;
    const auto half = [&](auto from, auto to) {
        const std::size_t start = hull.size();
        for (auto it = from; it != to; ++it) {
            while (hull.size() >= start + 2 &&
                   cross(hull.back() - hull[hull.size() - 2], *it - hull.back()) <= 0)
                hull.pop_back();
            hull.push_back(*it);
        }
        hull.pop_back(); // the other half starts with it
    };
    half(points.begin(), points.end());
    half(points.rbegin(), points.rend());
    return hull;
}

} // namespace drawercast::shape
