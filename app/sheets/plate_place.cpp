// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/plate_place.h"

#include "shape/boxes.h"

#include "sheets/room.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <numbers>

namespace drawercast::sheets {

namespace {

constexpr double step_px = 8;
constexpr int directions = 16;
constexpr double margin_px = 2;

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

namespace {

bool leader_may_run(Vec at, const Box& place, const Box& apart, const Taken& taken) {
    for (const auto& [a, b] : taken.leaders)
        if (segment_meets(a, b, apart)) return false;
    return !leader_crosses(at, leader_end(at, place), taken);
}

std::vector<Box> those_near(const std::vector<Box>& boxes, const Box& around) {
    std::vector<Box> near;
    std::copy_if(boxes.begin(), boxes.end(), std::back_inserter(near),
                 [&](const Box& box) { return shape::near(box, around); });
    return near;
}

/// What of `taken` a search within `around` can meet.
Taken near_by(const Taken& taken, const Box& around) {
    Taken near{those_near(taken.words, around),
               those_near(taken.kept, around),
               those_near(taken.pockets, around),
               {},
               taken.ground};
    for (const auto& [a, b] : taken.leaders) {
        Box reach;
        reach.add(a);
        reach.add(b);
        if (shape::near(reach, around)) near.leaders.emplace_back(a, b);
    }
    return near;
}

std::array<Vec, directions> make_ways() {
    std::array<Vec, directions> ways;
    for (std::size_t k = 0; k < ways.size(); ++k) {
        const double angle = 2 * std::numbers::pi * static_cast<double>(k) / directions;
        ways[k] = {std::cos(angle), std::sin(angle)};
    }
    return ways;
}

} // namespace

bool may_stand(Vec at, const Box& place, const Taken& taken, double px, bool over_pockets) {
    if (taken.ground && !shape::holds(*taken.ground, place)) return false;
    const Box apart = place.grown(margin_px * px);
    return !meets_any(taken.words, apart) && !meets_any(taken.kept, apart) &&
           (over_pockets || !meets_any(taken.pockets, apart)) && leader_may_run(at, place, apart, taken);
}

/// Asks may_stand() of hundreds of places: of what is near alone, and first whether what was in the way a
/// step before still is.
std::optional<Box> plate_place(Vec at, Vec size, const Taken& taken, double px, PlateReach reach) {
    static const std::array<Vec, directions> ways = make_ways();
    const double furthest = (step_px * reach.steps + 2 * margin_px) * px;
    const Vec side = size + Vec{furthest, furthest};
    const Taken near = near_by(taken, {at - side, at + side});
    std::vector<Box> in_the_way = near.pockets;
    for (const auto* more : {&near.words, &near.kept})
        in_the_way.insert(in_the_way.end(), more->begin(), more->end());
    for (const bool over_pockets : {false, true}) {
        if (over_pockets && !reach.over_pockets) break;
        const auto first =
            in_the_way.cbegin() + (over_pockets ? static_cast<std::ptrdiff_t>(near.pockets.size()) : 0);
        std::array<std::optional<Box>, directions> met; // by the step before
        for (int ring = 1; ring <= reach.steps; ++ring)
            for (std::size_t k = 0; k < ways.size(); ++k) {
                const Vec way = ways[k], center = at + way * (step_px * px * ring) +
                                                  Vec{way.x * size.x / 2, way.y * size.y / 2};
                const Box place{center - size * 0.5, center + size * 0.5};
                if (near.ground && !shape::holds(*near.ground, place)) continue;
                const Box apart = place.grown(margin_px * px);
                if (met[k] && shape::near(*met[k], apart)) continue;
                const auto other = std::find_if(first, in_the_way.cend(),
                                                [&](const Box& box) { return shape::near(box, apart); });
                if (other != in_the_way.cend())
                    met[k] = *other;
                else if (leader_may_run(at, place, apart, near))
                    return place;
            }
    }
    return std::nullopt;
}

} // namespace drawercast::sheets
