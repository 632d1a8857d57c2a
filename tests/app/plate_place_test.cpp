// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/plate_place.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace drawercast::sheets {
namespace {

/// The first of all places that may be stood on, each asked by itself.
std::optional<Box> asked_one_by_one(Vec at, Vec size, const Taken& taken, PlateReach reach) {
    constexpr double step_px = 8;
    constexpr int directions = 16;
    for (const bool over : {false, true})
        for (int ring = 1; ring <= reach.steps && (!over || reach.over_pockets); ++ring)
            for (int k = 0; k < directions; ++k) {
                const double angle = 2 * std::numbers::pi * k / directions;
                const Vec way{std::cos(angle), std::sin(angle)};
                const Vec center = at + way * (step_px * ring) + Vec{way.x * size.x / 2, way.y * size.y / 2};
                const Box place{center - size * 0.5, center + size * 0.5};
                if (may_stand(at, place, taken, 1, over)) return place;
            }
    return std::nullopt;
}

TEST(PlatePlace, is_the_first_that_may_be_stood_on) {
    std::mt19937 random(8);
    const auto upto = [&](double most) { return most * static_cast<double>(random() % 10000) / 10000; };
    const auto some = [&](int count, double size) {
        std::vector<Box> boxes;
        for (int i = 0; i < count; ++i) {
            const Vec from{upto(600), upto(400)};
            boxes.push_back({from, from + Vec{upto(size) + 1, upto(size) + 1}});
        }
        return boxes;
    };
    int found = 0, none = 0;
    for (int round = 0; round < 60; ++round) {
        Taken taken{some(round, 60), some(5, 40), some(round / 2, 90), {}, Box{{0, 0}, {600, 400}}};
        for (int i = 0; i < round / 3; ++i)
            taken.leaders.emplace_back(Vec{upto(600), upto(400)}, Vec{upto(600), upto(400)});
        const Vec at{upto(600), upto(400)}, size{30 + upto(70), 22};
        for (const PlateReach reach : {PlateReach{9, false}, PlateReach{4, true}, PlateReach{}}) {
            const auto place = plate_place(at, size, taken, 1, reach);
            const auto expected = asked_one_by_one(at, size, taken, reach);
            ASSERT_EQ(place.has_value(), expected.has_value());
            place ? ++found : ++none;
            if (!place) continue;
            EXPECT_EQ(place->min, expected->min);
            EXPECT_EQ(place->max, expected->max);
        }
    }
    EXPECT_GT(found, 50);
    EXPECT_GT(none, 20);
}

} // namespace
} // namespace drawercast::sheets
