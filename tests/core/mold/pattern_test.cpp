// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/pattern.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace drawercast::mold {
namespace {

TEST(Pattern, EvenOnEachSide) {
    const PatternIn in{480, 360, 16, 65, 0, job::Along::short_side, 0, 4};
    const auto closures = closures_of(in);
    ASSERT_EQ(closures.size(), 2u * 8 + 2 * 6);
    EXPECT_EQ(closures.front().at, (shape::Point<shape::InMold>{30, -8}));
    EXPECT_NEAR(closures[1].at.x_mm, 90, 1e-9); // 420 in 7 parts
    EXPECT_EQ(closures[8].at, (shape::Point<shape::InMold>{488, 30}));
    for (const auto& closure : closures) EXPECT_FALSE(closure.stiffener_end);
}

TEST(Pattern, StiffenersTakeThePlaceOfWhatTheyCover) {
    for (const auto along : {job::Along::short_side, job::Along::long_side}) {
        const PatternIn in{480, 360, 16, 65, 2, along, 45, 4};
        const auto stiffeners = stiffeners_of(in);
        ASSERT_EQ(stiffeners.size(), 2u);
        const bool along_y = along == job::Along::short_side;
        EXPECT_EQ(stiffeners[0].from, along_y ? (shape::Point<shape::InMold>{160, -16})
                                              : (shape::Point<shape::InMold>{-16, 120}));
        const auto closures = closures_of(in);
        EXPECT_EQ(std::count_if(closures.begin(), closures.end(), [](auto& c) { return c.stiffener_end; }),
                  4);
        for (const auto& closure : closures) {
            if (closure.stiffener_end) continue;
            for (const auto& stiffener : stiffeners) {
                const double apart = along_y ? std::abs(closure.at.x_mm - stiffener.from.x_mm)
                                             : std::abs(closure.at.y_mm - stiffener.from.y_mm);
                EXPECT_GE(apart, 45 / 2.0 + 4);
            }
        }
    }
}

TEST(Pattern, StiffenersStandOffWhatMustBeKeptOff) {
    PatternIn in{480, 360, 16, 65, 2, job::Along::short_side, 45, 4};
    in.stand_off_mm = 30;
    in.keep_off = {{165, 300}, {330, 20}};
    EXPECT_EQ(stiffener_places(in), (std::vector<double>{135, 300})); // 160 and 320, as little as it takes
    EXPECT_TRUE(stands_off(in));
    in.along = job::Along::long_side; // now y counts: 120 and 240 are clear of both
    EXPECT_EQ(stiffener_places(in), (std::vector<double>{120, 240}));
    in.along = job::Along::short_side;
    in.keep_off = {{120, 0}, {160, 0}, {200, 0}};
    EXPECT_EQ(stiffener_places(in).front(), 160); // no room within a third of the pitch
    EXPECT_FALSE(stands_off(in));
}

TEST(Pattern, OneInTheMiddleOfAShortSide) {
    const auto closures = closures_of({200, 50, 16, 65, 0, job::Along::short_side, 0, 4});
    const auto right =
        std::count_if(closures.begin(), closures.end(), [](auto& c) { return c.at.x_mm > 200; });
    EXPECT_EQ(right, 1);
}

TEST(Pattern, DrivesEachOnceMiddlesFirst) {
    const PatternIn in{480, 360, 16, 65, 2, job::Along::short_side, 45, 4};
    const auto closures = closures_of(in);
    auto order = driving_order(in, closures);
    const auto& first = closures[static_cast<std::size_t>(order[0])];
    EXPECT_LT(std::abs(first.at.x_mm - 240), 65);
    EXPECT_LT(closures[static_cast<std::size_t>(order[0])].at.y_mm, 0);
    EXPECT_GT(closures[static_cast<std::size_t>(order[1])].at.y_mm, 360); // then the opposite one
    std::sort(order.begin(), order.end());
    std::vector<int> all(closures.size());
    std::iota(all.begin(), all.end(), 0);
    EXPECT_EQ(order, all);
}

TEST(Pattern, KeepsOffTheCornersOwnScrewsWhereAWallEnds) {
    PatternIn in{480, 360, 16, 65, 0, job::Along::short_side, 0, 4};
    const auto first = [&](bool right) {
        double least = 1e9;
        for (const auto& closure : closures_of(in)) {
            const auto p = closure.at;
            if (right ? p.x_mm > 480 : p.y_mm < 0) least = std::min(least, right ? p.y_mm : p.x_mm);
        }
        return least;
    };
    in.corner = job::BoxCorner::lapped;
    EXPECT_DOUBLE_EQ(first(false), first_from_corner_mm);
    EXPECT_DOUBLE_EQ(first(true), first_from_butt_mm) << "the side ends between front and back";
    in.corner = job::BoxCorner::pinwheel;
    EXPECT_DOUBLE_EQ(first(true), first_from_corner_mm) << "it runs over the front's end";
}

} // namespace
} // namespace drawercast::mold
