// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/coarse.h"

#include "arrange/figure.h"

#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

namespace drawercast::arrange {

namespace {

using shape::Vec;

constexpr std::size_t few = 96; ///< corners an exact test takes no notice of (our guess)
constexpr double finest = 1.0 / 20'000;

/// Which corners stay between `first` and `last` (which do), for that tolerance. Without recursion: thousands
/// of corners may lie badly.
void keep_between(const std::vector<Vec>& ring, std::size_t first, std::size_t last, double squared,
                  std::vector<bool>& keep) {
    std::vector<std::pair<std::size_t, std::size_t>> open{{first, last}};
    while (!open.empty()) {
        const auto [from, to] = open.back();
        open.pop_back();
        double most = squared;
        std::size_t farthest = from;
        for (std::size_t i = from + 1; i < to; ++i) {
            const double off = distance_to_segment_squared(ring[i], ring[from], ring[to % ring.size()]);
            if (off <= most) continue;
            most = off;
            farthest = i;
        }
        if (farthest == from) continue;
        keep[farthest] = true;
        open.emplace_back(from, farthest);
        open.emplace_back(farthest, to);
    }
}

std::vector<Vec> thinned(const std::vector<Vec>& ring, double tolerance) {
    std::size_t opposite = 0;
    for (std::size_t i = 1; i < ring.size(); ++i)
        if (length(ring[i] - ring[0]) > length(ring[opposite] - ring[0])) opposite = i;
    std::vector<bool> keep(ring.size(), false);
    keep[0] = keep[opposite] = true;
    keep_between(ring, 0, opposite, tolerance * tolerance, keep);
    keep_between(ring, opposite, ring.size(), tolerance * tolerance, keep);
    std::vector<Vec> out;
    for (std::size_t i = 0; i < ring.size(); ++i)
        if (keep[i]) out.push_back(ring[i]);
    return out;
}

} // namespace

shape::Contour coarse(const shape::Contour& outline) {
    if (outline.core.size() <= few) return outline;
    const shape::Box box = shape::bounds(outline.core);
    const double size = std::max(box.width(), box.height());
    for (double tolerance = size * finest; tolerance < size / 20; tolerance *= 2) {
        shape::Contour out{thinned(outline.core, tolerance), outline.round_mm + tolerance};
        if (out.core.size() <= few && out.core.size() > 2) return out;
    }
    return outline;
}

} // namespace drawercast::arrange
