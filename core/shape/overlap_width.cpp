// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/gap.h"
#include "shape/region.h"

#include <algorithm>

namespace drawercast::shape {
namespace {

/// Counter-clockwise convex hull without points on its sides (Andrew's monotone chain).
Ring hull_of(Ring points) {
    std::sort(points.begin(), points.end(), [](Vec a, Vec b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    Ring hull;
    const auto add = [&](Vec p, std::size_t keep) {
        while (hull.size() > keep + 1 && cross(hull.back() - hull[hull.size() - 2], p - hull.back()) <= 0)
            hull.pop_back();
        hull.push_back(p);
    };
    for (const Vec p : points) add(p, 0);
    const std::size_t lower = hull.size() - 1;
    for (std::size_t i = points.size() - 1; i-- > 0;) add(points[i], lower);
    hull.pop_back();
    return hull;
}

/// Least distance between two parallel lines that hold the hull: one of them carries a side (rotating
/// calipers).
double least_width(const Ring& hull) {
    const std::size_t n = hull.size();
    double least = any_distance;
    for (std::size_t i = 0, far = 1; i < n; ++i) {
        const Vec side = hull[(i + 1) % n] - hull[i];
        const auto height = [&](std::size_t k) { return cross(side, hull[k % n] - hull[i]); };
        while (height(far + 1) > height(far)) ++far;
        least = std::min(least, height(far) / length(side));
    }
    return least;
}

} // namespace

double overlap_width(const Contour& a, const Contour& b) {
    const Box common = shared_box(bounds(a), bounds(b));
    if (common.empty()) return 0;
    const Expected<Region> both = shared(region_of(a), region_of(b));
    if (!both) return std::min(common.width(), common.height()); // surely enough
    double widest = 0;
    for (const Patch& patch : both->patches) widest = std::max(widest, least_width(hull_of(patch.outer)));
    return widest;
}

} // namespace drawercast::shape
