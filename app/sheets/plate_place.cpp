// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/plate_place.h"

#include "sheets/room.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::sheets {

namespace {

constexpr double step_px = 8;
constexpr int directions = 16;
constexpr double margin_px = 2;

bool within(const Box& place, const Box& ground) {
    return place.min.x >= ground.min.x && place.max.x <= ground.max.x && place.min.y >= ground.min.y &&
           place.max.y <= ground.max.y;
}

bool meets_any(const std::vector<Box>& boxes, const Box& place) {
    return std::any_of(boxes.begin(), boxes.end(), [&](const Box& box) { return shape::near(box, place); });
}

bool cross(Vec a, Vec b, Vec c, Vec d) {
    const auto side = [](Vec from, Vec to, Vec p) { return shape::cross(to - from, p - from); };
    return (side(a, b, c) > 0) != (side(a, b, d) > 0) && (side(c, d, a) > 0) != (side(c, d, b) > 0);
}

/// Whether the leader runs over words or another leader. What it starts in is what it speaks of.
bool leader_crosses(Vec at, Vec to, const Taken& taken) {
    for (const auto& [a, b] : taken.leaders)
        if (cross(at, to, a, b)) return true;
    Box reach;
    reach.add(at);
    reach.add(to);
    return std::any_of(taken.words.begin(), taken.words.end(), [&](const Box& box) {
        return shape::near(box, reach) && !shape::near(box, Box{at, at}) && segment_meets(at, to, box);
    });
}

} // namespace

Vec leader_end(Vec at, const Box& place) {
    return {std::clamp(at.x, place.min.x, place.max.x), std::clamp(at.y, place.min.y, place.max.y)};
}

bool may_stand(Vec at, const Box& place, const Taken& taken, double px, bool over_pockets) {
    if (taken.ground && !within(place, *taken.ground)) return false;
    const Box apart = place.grown(margin_px * px);
    if (meets_any(taken.words, apart) || meets_any(taken.kept, apart) ||
        (!over_pockets && meets_any(taken.pockets, apart)))
        return false;
    for (const auto& [a, b] : taken.leaders)
        if (segment_meets(a, b, apart)) return false;
    return !leader_crosses(at, leader_end(at, place), taken);
}

std::optional<Box> plate_place(Vec at, Vec size, const Taken& taken, double px, PlateReach reach) {
    for (const bool over_pockets : {false, true}) {
        if (over_pockets && !reach.over_pockets) break;
        for (int ring = 1; ring <= reach.steps; ++ring)
            for (int k = 0; k < directions; ++k) {
                const double angle = 2 * std::numbers::pi * k / directions;
                const Vec way{std::cos(angle), std::sin(angle)};
                const Vec center =
                    at + way * (step_px * px * ring) + Vec{way.x * size.x / 2, way.y * size.y / 2};
                const Box place{center - size * 0.5, center + size * 0.5};
                if (may_stand(at, place, taken, px, over_pockets)) return place;
            }
    }
    return std::nullopt;
}

} // namespace drawercast::sheets
