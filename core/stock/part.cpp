// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/part.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace drawercast::stock {

void add_screws(std::vector<ScrewUse>& screws, const ScrewUse& more) {
    if (more.count == 0) return;
    const auto before = [](const ScrewUse& a, const ScrewUse& b) {
        return std::tie(a.diameter_mm, a.length_mm) < std::tie(b.diameter_mm, b.length_mm);
    };
    const auto at = std::lower_bound(screws.begin(), screws.end(), more, before);
    if (at != screws.end() && !before(more, *at))
        at->count += more.count;
    else
        screws.insert(at, more);
}

namespace {

/// The box of the corners with sides along and across the unit vector.
Panel panel_along(const std::vector<shape::Vec>& corners, shape::Vec along, double round_mm) {
    double low_a = std::numeric_limits<double>::infinity(), high_a = -low_a, low_b = low_a, high_b = -low_a;
    for (const shape::Vec corner : corners) {
        const double a = corner.x * along.x + corner.y * along.y;
        const double b = corner.y * along.x - corner.x * along.y;
        low_a = std::min(low_a, a), high_a = std::max(high_a, a);
        low_b = std::min(low_b, b), high_b = std::max(high_b, b);
    }
    const double a = high_a - low_a + 2 * round_mm, b = high_b - low_b + 2 * round_mm;
    return {std::max(a, b), std::min(a, b)};
}

} // namespace

Panel panel_of(const shape::Contour& contour) {
    Panel best = panel_along(contour.core, {1, 0}, contour.round_mm);
    for (std::size_t i = 0; i < contour.core.size() && contour.core.size() > 1; ++i) {
        const shape::Vec a = contour.core[i], b = contour.core[(i + 1) % contour.core.size()];
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        if (length == 0) continue;
        const Panel panel =
            panel_along(contour.core, {(b.x - a.x) / length, (b.y - a.y) / length}, contour.round_mm);
        if (panel.length_mm * panel.width_mm < best.length_mm * best.width_mm * (1 - 1e-9)) best = panel;
    }
    return best;
}

Panel panel_of(const shape::Ring& ring) { return panel_of(shape::Contour{ring, 0}); }

} // namespace drawercast::stock
