// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/fit.h"
#include "shape/region.h"
#include "shape/simple.h"

#include "core/shape/random_shapes.h"

#include <gtest/gtest.h>

namespace drawercast::shape {
namespace {

using namespace testing;

struct Row {
    const char* name;
    Given given;
    Fit fit;
    Given same_as;
};

TEST(Fit, FamiliesAreKept) {
    const Row rows[] = {
        {"none", Rectangle{60, 40, 5}, {0, 0}, Rectangle{60, 40, 5}},
        {"grown", Rectangle{60, 40, 5}, {1, 1}, Rectangle{62, 42, 6}},
        {"squeezed", Rectangle{60, 40, 5}, {-2, -2}, Rectangle{56, 36, 3}},
        {"squeezed past its corner", Rectangle{60, 40, 1}, {-2, -2}, Rectangle{56, 36, 0}},
        {"sharp grown stays sharp", Rectangle{60, 40, 0}, {3, 3}, Rectangle{66, 46, 0}},
        {"ends along x", Rectangle{60, 40, 5}, {-1, 2}, Rectangle{64, 38, 4}},
        {"ends along y", Rectangle{40, 60, 5}, {-1, 2}, Rectangle{38, 64, 4}},
        {"a square's long axis is x", Rectangle{40, 40, 0}, {-1, 2}, Rectangle{44, 38, 0}},
        {"corner no larger than half the lesser side", Rectangle{20, 20, 10}, {2, 0}, Rectangle{20, 24, 10}},
        {"circle", Circle{30}, {-1, 5}, Circle{28}},
        {"capsule", Capsule{60, 20}, {-1, -1}, Capsule{58, 18}},
        {"capsule with its own ends", Capsule{60, 20}, {-1, 2}, Capsule{64, 18}},
        {"capsule grown past its ends", Capsule{22, 20}, {3, 0}, Rectangle{22, 26, 11}},
    };
    for (const Row& row : rows) {
        SCOPED_TRACE(row.name);
        const auto got = fitted(row.given, row.fit);
        ASSERT_TRUE(got) << one_line(got.error());
        EXPECT_EQ(*got, *contour_of(row.same_as));
    }
}

TEST(Fit, RefusesWhatVanishes) {
    const Given dumbbell = Polygon{{{{0, 0}},
                                    {{30, 0}},
                                    {{30, 13}},
                                    {{60, 13}},
                                    {{60, 0}},
                                    {{90, 0}},
                                    {{90, 30}},
                                    {{60, 30}},
                                    {{60, 17}},
                                    {{30, 17}},
                                    {{30, 30}},
                                    {{0, 30}}}};
    const Given c_shape = Polygon{{{{0, 0}},
                                   {{60, 0}},
                                   {{60, 28}},
                                   {{50, 28}},
                                   {{50, 10}},
                                   {{10, 10}},
                                   {{10, 50}},
                                   {{50, 50}},
                                   {{50, 32}},
                                   {{60, 32}},
                                   {{60, 60}},
                                   {{0, 60}}}};
    const std::pair<Given, Fit> rows[] = {
        {Rectangle{60, 4, 0}, {-2, -2}},
        {Rectangle{60, 4, 0}, {-1, -30}},
        {Circle{4}, {-2, 0}},
        {Capsule{10, 4}, {-2, 0}},
        {Capsule{10, 4}, {0, -5}},
        {dumbbell, {-2.5, -2.5}},
        {dumbbell, {-20, -20}},
        {c_shape, {3, 3}},
        {dumbbell, {0, -50}},
    };
    for (const auto& [given, fit] : rows) {
        const auto got = fitted(given, fit);
        ASSERT_FALSE(got) << fit.side_mm << " " << fit.end_mm;
        EXPECT_EQ(got.error().code, "fit-vanishes");
        EXPECT_FALSE(got.error().what.empty());
    }
}

TEST(Fit, BadOutlinesAreRefusedAsSuch) {
    EXPECT_EQ(fitted(Rectangle{-1, 4, 0}, {10, 10}).error().code, "outline-size");
    EXPECT_EQ(fitted(Polygon{{{{0, 0}}, {{9, 9}}, {{9, 0}}, {{0, 9}}}}, {1, 1}).error().code,
              "outline-crosses");
}

Polygon l_shape() { return Polygon{{{{0, 0}}, {{80, 0}}, {{80, 20}}, {{20, 20}}, {{20, 50}}, {{0, 50}}}}; }

TEST(Fit, FreeOutlinesGrowRoundAndShrinkSharp) {
    const Contour grown = *fitted(l_shape(), {2, 2});
    EXPECT_EQ(grown.round_mm, 2);
    EXPECT_NEAR(area(grown), 2200 + 260 * 2 + 5 * pi - 4, 1e-9); // five round corners, one sharp inner one
    const Contour shrunk = *fitted(l_shape(), {-2, -2});
    // convex corners stay sharp, the reflex one becomes a quarter arc about itself
    EXPECT_NEAR(area(shrunk), 76 * 46 - 60 * 30 + (4 - pi), 0.01);
    EXPECT_EQ(bounds(shrunk), (Box{{2, 2}, {78, 48}}));
}

TEST(Fit, EndsOfFreeOutlinesMoveByTheirOwnFit) {
    for (const double end : {-3.0, 0.0, 4.0}) {
        const Box box = bounds(*fitted(l_shape(), {-1, end}));
        EXPECT_NEAR(box.min.x, -end, 1e-9);
        EXPECT_NEAR(box.max.x, 80 + end, 1e-9);
        EXPECT_NEAR(box.min.y, 1, 1e-9);
        EXPECT_NEAR(box.max.y, 49, 1e-9);
    }
}

/// Shrinking is what is at least that far inside: by the library's offset as the twin; always one simple
/// ring.
TEST(Fit, FreeOutlinesAgreeWithTheOffset) {
    Dice dice(71);
    int fits = 0;
    for (int i = 0; i < 200; ++i) {
        Polygon polygon;
        for (const Vec p : star(dice, dice.whole(5, 16), 25, 50).core)
            polygon.corners.push_back({p, dice.whole(0, 2) == 0 ? dice.real(-1, 3) : 0});
        const auto given = contour_of(polygon);
        if (!given) continue;
        const double side = dice.real(-3, 3);
        const auto got = fitted(polygon, {side, side});
        if (!got) {
            EXPECT_EQ(got.error().code, "fit-vanishes");
            continue;
        }
        ++fits;
        EXPECT_NEAR(area(*got), area(*offset_round(region_of(*given), side)), 0.004 * perimeter(*given));
        const auto other_ends = fitted(polygon, {side, side + 0.5});
        EXPECT_TRUE(!other_ends || !first_meeting(traced(*other_ends)));
    }
    EXPECT_GT(fits, 120);
}

} // namespace
} // namespace drawercast::shape
