// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/fillers.h"

#include "casting/fixing.h"
#include "shape/gap.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <tuple>
#include <utility>

namespace drawercast::casting {
namespace {

using shape::Vec;

constexpr double sliver_mm2 = 20;
constexpr int places_along = 60; ///< where more screws are tried, along the longer side

double inside_mm(const shape::Contour& outline, Vec p) {
    return shape::contains(outline, p) ? shape::gap_inside(shape::Contour{{p}, 0}, outline).mm : -1;
}

/// Places of the filler on a grid that starts half a step inside, each with its distance from the sides.
std::vector<std::pair<Vec, double>> places_in(const shape::Contour& outline) {
    const shape::Box box = shape::bounds(outline);
    const double step = std::max(box.width(), box.height()) / places_along;
    std::vector<std::pair<Vec, double>> places;
    for (double y = box.min.y + step / 2; y < box.max.y; y += step)
        for (double x = box.min.x + step / 2; x < box.max.x; x += step)
            if (const double inside = inside_mm(outline, {x, y}); inside >= 0)
                places.emplace_back(Vec{x, y}, inside);
    return places;
}

double to_nearest(const std::vector<Vec>& screws, Vec p) {
    double nearest = std::numeric_limits<double>::infinity();
    for (const Vec screw : screws) nearest = std::min(nearest, length(screw - p));
    return nearest;
}

/// The place furthest from all screws, of those that are well inside.
std::optional<Vec> next_screw(const std::vector<std::pair<Vec, double>>& places,
                              const std::vector<Vec>& screws) {
    constexpr double much = 1e-6;
    std::optional<Vec> best;
    double most = 0;
    for (const auto& [at, inside] : places) {
        if (inside < filler_edge_mm) continue;
        // Two of the same distance: the deeper one, so that screws of an arm stand in its middle.
        const double far = to_nearest(screws, at) + std::min(inside, screw_inside_mm);
        if (far > most + much) most = far, best = at;
    }
    return best;
}

std::vector<Vec> screws_of(const shape::Ring& ring) {
    const shape::Contour outline{ring, 0};
    std::vector<Vec> screws = fixing_of(outline).screws;
    std::erase_if(screws, [&](Vec at) { return inside_mm(outline, at) < filler_edge_mm; });
    if (screws.empty()) return screws;
    const auto places = places_in(outline);
    const auto too_far = [&] {
        return std::any_of(places.begin(), places.end(), [&](const auto& place) {
            return to_nearest(screws, place.first) > filler_pitch_mm;
        });
    };
    while (too_far()) {
        const auto next = next_screw(places, screws);
        if (!next || to_nearest(screws, *next) < filler_pitch_mm / 2) break; // slim arms: these are glued
        screws.push_back(*next);
    }
    std::sort(screws.begin(), screws.end(),
              [](Vec a, Vec b) { return std::tie(b.y, a.x) < std::tie(a.y, b.x); });
    return screws;
}

} // namespace

std::vector<Filler> fillers_of(const PatternBoard& board) {
    std::vector<Filler> fillers;
    for (const auto& patch : board.fillers.region.patches)
        if (shape::area(patch.outer) > sliver_mm2)
            fillers.push_back({0, patch.outer, screws_of(patch.outer)});
    std::sort(fillers.begin(), fillers.end(), [](const Filler& a, const Filler& b) {
        const Vec p = shape::bounds(shape::Contour{a.outline, 0}).center();
        const Vec q = shape::bounds(shape::Contour{b.outline, 0}).center();
        return std::tie(q.y, p.x) < std::tie(p.y, q.x);
    });
    int number = 0;
    for (Filler& filler : fillers) filler.number = ++number;
    return fillers;
}

} // namespace drawercast::casting
