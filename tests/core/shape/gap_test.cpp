// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/gap.h"
#include "shape/segments.h"

#include "core/shape/boost_twin.h"
#include "core/shape/random_shapes.h"

#include <gtest/gtest.h>

namespace drawercast::shape {
namespace {

using namespace testing;

Contour rectangle(double w, double h, double corner, Pose pose) {
    return placed(*contour_of(Rectangle{w, h, corner}), pose);
}
Contour circle(double d, Vec at) { return placed(*contour_of(Circle{d}), {at, 0}); }

struct Pair {
    const char* name;
    Contour a, b;
    double mm;
};

TEST(Gap, KnownPairs) {
    const double diagonal = std::sqrt(2.0);
    const Contour horseshoe = *contour_of(Polygon{
        {{{0, 0}}, {{60, 0}}, {{60, 50}}, {{40, 50}}, {{40, 20}}, {{20, 20}}, {{20, 50}}, {{0, 50}}}});
    const Pair pairs[] = {
        {"side to side", rectangle(20, 10, 0, {{0, 0}}), rectangle(20, 10, 0, {{23, 4}}), 3},
        {"corner to corner", rectangle(20, 10, 0, {{0, 0}}), rectangle(20, 10, 0, {{23, 13}}), 3 * diagonal},
        {"round corner to round corner", rectangle(20, 20, 4, {{0, 0}}), rectangle(20, 20, 6, {{24, 24}}),
         (4 + 4 + 6) * diagonal - 10},
        {"circle to circle", circle(10, {0, 0}), circle(20, {30, 40}), 35},
        {"circle to side", circle(10, {0, 0}), rectangle(20, 40, 0, {{18, 5}}), 3},
        {"capsule to capsule, end to side", placed(*contour_of(Capsule{40, 10}), {{0, 0}, 0}),
         placed(*contour_of(Capsule{40, 10}), {{40, 7}, 90}), 15},
        {"crossed capsules", placed(*contour_of(Capsule{40, 10}), {{0, 0}, 0}),
         placed(*contour_of(Capsule{40, 10}), {{3, 0}, 90}), 0},
        {"flush", rectangle(20, 10, 0, {{0, 0}}), rectangle(20, 10, 0, {{20, 3}}), 0},
        {"tangent circles", circle(10, {0, 0}), circle(20, {9, 12}), 0},
        {"radii overlap, cores do not", circle(10, {0, 0}), circle(20, {9, 11}), 0},
        {"one holds the other", rectangle(100, 80, 5, {{0, 0}}), circle(10, {3, 3}), 0},
        {"the other holds one", circle(10, {3, 3}), rectangle(100, 80, 5, {{0, 0}}), 0},
        {"the same", rectangle(30, 20, 3, {{5, 5}, 33}), rectangle(30, 20, 3, {{5, 5}, 33}), 0},
        {"cross without a corner inside", rectangle(60, 6, 0, {{0, 0}}), rectangle(6, 60, 0, {{0, 0}}), 0},
        {"in a horseshoe", circle(10, {30, 36}), horseshoe, 5},
        {"horseshoe around it", horseshoe, rectangle(8, 8, 0, {{30, 40}, 0}), 6},
    };
    for (const Pair& p : pairs) {
        SCOPED_TRACE(p.name);
        EXPECT_NEAR(gap_between(p.a, p.b).mm, p.mm, 1e-12);
        EXPECT_NEAR(gap_between(p.b, p.a).mm, p.mm, 1e-12);
        if (p.mm == 0) {
            EXPECT_EQ(gap_between(p.a, p.b, 0).mm, 0) << "exactly";
        }
    }
}

/// Flush at any angle is touching, not 1e-15 mm apart.
TEST(Gap, TouchingIsExactlyZeroAtEveryAngle) {
    Dice dice(31);
    for (int i = 0; i < 2000; ++i) {
        const double w = dice.step(5, 80);
        const double h = dice.step(5, 80);
        const Pose pose{{dice.step(0, 500), dice.step(0, 400)}, 15.0 * dice.whole(0, 23)};
        const Contour a = rectangle(w, h, 0, pose);
        const Contour b = rectangle(w, h, 0, {placed(Vec{w, dice.step(-h, h)}, pose), pose.turn_deg});
        EXPECT_EQ(gap_between(a, b, 6).mm, 0);
        const double d = dice.step(5, 50);
        EXPECT_EQ(gap_between(a, circle(d, placed(Vec{0, h / 2 + d / 2}, pose)), 6).mm, 0);
    }
}

/// Both points lie on their outlines' boundaries and the gap is their distance.
void expect_points_on_boundaries(const Contour& a, const Contour& b, const Gap& gap) {
    if (gap.mm > 0) {
        EXPECT_NEAR(length(gap.a - gap.b), gap.mm, 1e-9);
        EXPECT_NEAR(length(nearest_on_core(a.core, gap.a) - gap.a), a.round_mm, 1e-9);
        EXPECT_NEAR(length(nearest_on_core(b.core, gap.b) - gap.b), b.round_mm, 1e-9);
    } else {
        EXPECT_EQ(gap.a, gap.b);
        EXPECT_TRUE(contains(a, gap.a));
        EXPECT_TRUE(contains(b, gap.b));
    }
}

TEST(Gap, AgreesWithTheLibrary) {
    Dice dice(32);
    int zero = 0;
    for (int i = 0; i < 20000; ++i) {
        const double reach = i % 3 == 0 ? 30 : 90;
        const Contour a = placed(any_outline(dice), any_pose(dice, reach));
        const Contour b = placed(any_outline(dice), any_pose(dice, reach));
        const double expected = std::max(0.0, core_distance(a.core, b.core) - a.round_mm - b.round_mm);
        const Gap gap = gap_between(a, b);
        ASSERT_NEAR(gap.mm, expected, 1e-11) << "pair " << i;
        EXPECT_EQ(gap.mm, gap_between(b, a).mm);
        expect_points_on_boundaries(a, b, gap);
        zero += gap.mm == 0;
    }
    EXPECT_GT(zero, 3000) << "overlapping and holding pairs are among them";
    EXPECT_LT(zero, 17000);
}

/// A cut-off never changes an answer within it, the boxes given by the caller neither.
TEST(Gap, CutOffOnlyLeavesOutWhatIsFurther) {
    Dice dice(33);
    for (int i = 0; i < 20000; ++i) {
        const Contour a = placed(any_outline(dice), any_pose(dice, 60));
        const Contour b = placed(any_outline(dice), any_pose(dice, 60));
        const Gap whole = gap_between(a, b);
        const double cutoff = i % 2 == 0 ? 6 : dice.real(0, 40);
        const Gap cut = gap_between(a, bounds(a), b, bounds(b), cutoff);
        if (whole.mm <= cutoff)
            EXPECT_EQ(cut.mm, whole.mm);
        else
            EXPECT_TRUE(cut.mm == whole.mm || cut.mm == any_distance);
    }
}

TEST(Gap, AtTheCutOffStillCounts) {
    const Contour a = rectangle(20, 10, 2, {{0, 0}, 30});
    const Contour b = rectangle(20, 10, 2, {placed(Vec{26, 0}, {{0, 0}, 30}), 30});
    EXPECT_NEAR(gap_between(a, b, 6).mm, 6, 1e-12);
    EXPECT_EQ(gap_between(a, b, 5.999999).mm, any_distance);
}

TEST(Gap, LargeOutlinesNeedSeveralBatches) {
    Dice dice(34);
    for (int i = 0; i < 30; ++i) {
        const Contour a = placed(star(dice, 400, 80, 90), {{0, 0}, 0});
        const Contour b = placed(star(dice, 700, 80, 90), {{dice.real(150, 200), 20}, 0});
        EXPECT_NEAR(gap_between(a, b).mm, core_distance(a.core, b.core), 1e-11);
    }
}

} // namespace
} // namespace drawercast::shape
