// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/dilate.h"
#include "shape/region.h"

#include "core/shape/random_shapes.h"

#include <gtest/gtest.h>

namespace drawercast::shape {
namespace {

using namespace testing;

Region rectangle(double w, double h, Pose pose) {
    return region_of(placed(*contour_of(Rectangle{w, h, 0}), pose));
}

TEST(Region, TheGridIsBinaryAndHasOneZero) {
    EXPECT_EQ(on_grid({0.1, -0.1}), (Vec{102.0 / 1024, -102.0 / 1024}));
    EXPECT_FALSE(std::signbit(on_grid({-1e-9, 0}).x));
    EXPECT_EQ(on_grid(on_grid({123.4567, 0.3})), on_grid({123.4567, 0.3}));
}

TEST(Region, FinerThanTheGridIsNothing) {
    EXPECT_TRUE(region_of(*contour_of(Rectangle{0.0003, 50, 0})).empty());
    EXPECT_TRUE(region_of(*contour_of(Circle{0.0003})).empty());
}

TEST(Region, MeasuresCountHoles) {
    const Region frame = *without(rectangle(100, 60, {}), rectangle(40, 20, {{5, 5}, 0}));
    ASSERT_EQ(frame.patches.size(), 1u);
    ASSERT_EQ(frame.patches[0].holes.size(), 1u);
    EXPECT_DOUBLE_EQ(area(frame), 6000 - 800);
    EXPECT_DOUBLE_EQ(perimeter(frame), 320 + 120);
    EXPECT_GT(area(frame.patches[0].outer), 0);
    EXPECT_LT(area(frame.patches[0].holes[0]), 0);
    EXPECT_EQ(bounds(frame), (Box{{-50, -30}, {50, 30}}));
}

TEST(Region, EmptyOperandsAndBoxesApart) {
    const Region a = rectangle(10, 10, {});
    const Region far = rectangle(10, 10, {{50, 0}, 0});
    const Region none;
    EXPECT_EQ(*united(a, none), a);
    EXPECT_EQ(*united(none, a), a);
    EXPECT_TRUE(shared(a, none)->empty());
    EXPECT_EQ(*without(a, none), a);
    EXPECT_TRUE(without(none, a)->empty());
    EXPECT_EQ(united(a, far)->patches.size(), 2u);
    EXPECT_TRUE(shared(a, far)->empty());
    EXPECT_TRUE(united(std::vector<Region>{})->empty());
}

/// Flush at any angle: one piece, no sliver between, no slit.
TEST(Region, FlushOutlinesBecomeOnePiece) {
    for (int quarter = 0; quarter < 24; ++quarter) {
        const Pose pose{{212.3, 147.9}, 15.0 * quarter};
        const Region a = rectangle(60, 40, pose);
        const Region b = rectangle(60, 40, {placed(Vec{60, 0}, pose), pose.turn_deg});
        const Region both = *united(a, b);
        EXPECT_NEAR(area(both), 4800, 0.3);
        EXPECT_LE(area(*shared(a, b)), 0.1);
        EXPECT_NEAR(area(*without(a, b)), 2400, 0.2);
        if (quarter % 6 == 0) {
            EXPECT_EQ(both.patches.size(), 1u);
            EXPECT_TRUE(shared(a, b)->empty());
        }
        EXPECT_EQ(without(a, b)->patches.size(), 1u);
    }
}

TEST(Region, AreasAddUp) {
    Dice dice(51);
    for (int i = 0; i < 400; ++i) {
        const Region a = region_of(placed(any_outline(dice), any_pose(dice, 30)));
        const Region b = region_of(placed(any_outline(dice), any_pose(dice, 30)));
        const Region c = region_of(placed(any_outline(dice), any_pose(dice, 30)));
        const double slack = 0.002 * (perimeter(a) + perimeter(b) + perimeter(c));
        const double ab = area(*shared(a, b));
        EXPECT_NEAR(area(*united(a, b)) + ab, area(a) + area(b), slack);
        EXPECT_NEAR(area(*without(a, b)) + ab, area(a), slack);
        EXPECT_NEAR(area(*without(*united(a, b), c)), area(*united(*without(a, c), *without(b, c))), slack);
        const double bc = area(*shared(b, c));
        const double ca = area(*shared(c, a));
        const double abc = area(*shared(*shared(a, b), c));
        EXPECT_NEAR(area(*united(std::vector<Region>{a, b, c})),
                    area(a) + area(b) + area(c) - ab - bc - ca + abc, slack);
    }
}

TEST(Region, UnionsByClustersDoNotDependOnTheOrder) {
    Dice dice(52);
    std::vector<Region> all;
    for (int i = 0; i < 60; ++i) all.push_back(region_of(placed(any_outline(dice), any_pose(dice, 250))));
    const double whole = area(*united(all));
    double one_by_one = 0;
    Region grown;
    for (const Region& region : all) grown = *united(grown, region);
    one_by_one = area(grown);
    EXPECT_NEAR(whole, one_by_one, 0.5);
    std::reverse(all.begin(), all.end());
    EXPECT_NEAR(whole, area(*united(all)), 0.5);
    EXPECT_EQ(*united(all), *united(all));
}

TEST(Region, RoundedReflexOutlinesWhoseSlotClosesHaveAnArea) {
    // a U whose slot, 6 wide, closes under a radius of 4 and leaves nothing open
    const Contour u{{{0, 0}, {46, 0}, {46, 40}, {26, 40}, {26, 20}, {20, 20}, {20, 40}, {0, 40}}, 4};
    const Region region = region_of(u);
    ASSERT_EQ(region.patches.size(), 1u);
    // hull of the U grown by 4, less the dent that the two round corners leave at the slot's mouth
    const double h = 4 - std::sqrt(16.0 - 9); // how deep the mouth's dent is
    const double dent =
        6 * 4 - (3 * std::sqrt(7.0) + 16 * std::asin(0.75)); // under both arcs' common tangent
    EXPECT_GT(h, 0);
    EXPECT_NEAR(area(region), 46 * 40 + 172 * 4 + 16 * pi - dent, 0.3);
}

TEST(Dilated, ConvexInClosedFormAndFreeByOffsetAgree) {
    Dice dice(53);
    for (int i = 0; i < 100; ++i) {
        const Contour outline = placed(any_outline(dice), any_pose(dice, 200));
        const double by = dice.real(0.2, 8);
        const Region region = *dilated(outline, by);
        const Region twin = *offset_round(region_of(outline), by);
        EXPECT_NEAR(area(region), area(twin), 0.004 * perimeter(twin));
        if (convex(outline)) {
            EXPECT_NEAR(area(region), area(Contour{outline.core, outline.round_mm + by}),
                        0.003 * perimeter(region));
        }
    }
}

} // namespace
} // namespace drawercast::shape
