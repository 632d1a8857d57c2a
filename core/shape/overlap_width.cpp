// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/gap.h"
#include "shape/hull.h"
#include "shape/region.h"

#include <algorithm>

namespace drawercast::shape {
namespace {

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
