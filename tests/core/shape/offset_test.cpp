// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/dilate.h"
#include "shape/segments.h"

#include "core/shape/random_shapes.h"

#include <gtest/gtest.h>

namespace drawercast::shape {
namespace {

using namespace testing;

/// Steiner's formula A + P·r + π·r² for convex outlines; chords lose less than their sagitta along the arcs.
TEST(OffsetRound, Steiner) {
    Dice dice(61);
    for (int i = 0; i < 200; ++i) {
        const Region from =
            region_of(placed(convex_ring(dice, dice.whole(3, 40), dice.real(5, 80)), any_pose(dice, 300)));
        for (const double r : {1.5, 10.0}) {
            const Region to = *offset_round(from, r);
            const double exact = area(from) + perimeter(from) * r + pi * r * r;
            EXPECT_NEAR(area(to), exact, 0.0007 * perimeter(to) + 2 * pi * r * chord_sagitta_mm);
        }
    }
}

double boundary_distance(const Contour& c, Vec p) { return length(nearest_on_core(c.core, p) - p); }

/// Points all around, each told by its exact distance whether it belongs to the result.
TEST(OffsetRound, PointsLieOnTheRightSide) {
    Dice dice(62);
    for (int i = 0; i < 60; ++i) {
        const Contour outline = star(dice, 40, 15, 60);
        const Region from = region_of(outline);
        for (const double by : {1.5, -1.5, 6.0, -6.0}) {
            const auto to = offset_round(from, by);
            ASSERT_TRUE(to) << one_line(to.error());
            for (int k = 0; k < 200; ++k) {
                const Vec p{dice.real(-70, 70), dice.real(-70, 70)};
                const double d = boundary_distance(outline, p);
                if (std::abs(d - std::abs(by)) < 0.004) continue;
                const bool within = holds(outline.core, p);
                const bool expected = by > 0 ? within || d < by : within && d > -by;
                bool got = false;
                for (const Patch& patch : to->patches) {
                    got = got || holds(patch.outer, p);
                    for (const Ring& hole : patch.holes) got = got && !holds(hole, p);
                }
                EXPECT_EQ(got, expected) << "star " << i << " by " << by;
            }
        }
    }
}

/// A comb whose slots are exactly twice the offset wide: the library alone returns invalid outlines for
/// these.
TEST(OffsetRound, CombsWithSlotsOfTwiceTheOffset) {
    Dice dice(63);
    for (int i = 0; i < 200; ++i) {
        const double r = dice.step(0.5, 6);
        const int teeth = dice.whole(2, 8);
        const double tooth = dice.step(2, 12);
        const double depth = dice.step(5, 30);
        const double back = dice.step(3, 10);
        Contour comb{{{0, -back}}, 0};
        const double length_mm = teeth * tooth + (teeth - 1) * 2 * r;
        comb.core.push_back({length_mm, -back});
        for (int t = teeth; t-- > 0;) {
            const double x = t * (tooth + 2 * r);
            for (const Vec p : {Vec{x + tooth, 0}, Vec{x + tooth, depth}, Vec{x, depth}, Vec{x, 0}})
                if (!((t == teeth - 1 && p == Vec{x + tooth, 0}) || (t == 0 && p == Vec{x, 0})))
                    comb.core.push_back(p);
        }
        const Contour there = placed(comb, {{50, 40}, 15.0 * dice.whole(0, 23)});
        const auto grown = offset_round(region_of(there), r);
        ASSERT_TRUE(grown) << one_line(grown.error()) << " comb " << i;
        // slots fill up to where the round corners of the teeth part: a whole rectangle less (4 − π)/2·r² a
        // mouth
        const double exact = length_mm * (depth + back) + 2 * (length_mm + depth + back) * r + pi * r * r -
                             (teeth - 1) * (2 - pi / 2) * r * r;
        EXPECT_NEAR(area(*grown), exact, 0.004 * (perimeter(*grown) + (teeth - 1) * 2 * depth))
            << "comb " << i;
    }
}

TEST(OffsetMitred, StraightOutlinesKeepTheirCorners) {
    Dice dice(64);
    for (int i = 0; i < 100; ++i) {
        const double w = dice.step(50, 600);
        const double h = dice.step(50, 400);
        const Pose pose{{dice.step(0, 500), dice.step(0, 500)}, 15.0 * dice.whole(0, 23)};
        const Region from = region_of(placed(*contour_of(Rectangle{w, h, 0}), pose));
        for (const double by : {-0.5, 0.5, -3.0, 10.0}) {
            const Region to = *offset_mitred(from, by);
            EXPECT_EQ(to.patches.at(0).outer.size(), 4u);
            EXPECT_NEAR(area(to), (w + 2 * by) * (h + 2 * by), 0.0015 * perimeter(from));
        }
    }
}

TEST(OffsetMitred, InletsKeepTheirCornersToo) {
    const Contour u{{{0, 0}, {100, 0}, {100, 80}, {60, 80}, {60, 30}, {40, 30}, {40, 80}, {0, 80}}, 0};
    const Region smaller = *offset_mitred(region_of(u), -2);
    EXPECT_NEAR(area(smaller), 96 * 76 - 24 * 50, 1e-6);
    const Region larger = *offset_mitred(region_of(u), 2);
    EXPECT_NEAR(area(larger), 104 * 84 - 16 * 50, 1e-6);
}

TEST(OffsetMitred, AcuteTipsEndAtTwiceTheOffset) {
    const Region needle = region_of(*contour_of(Polygon{{{{0, 0}}, {{100, 0}}, {{100, 10}}}}));
    const Region grown = *offset_mitred(needle, 3);
    EXPECT_GT(bounds(grown).min.x, -6.01);
    EXPECT_LT(bounds(grown).min.x, -5.5);
}

TEST(Offset, ErosionCanLeaveNothingOrSeveralPieces) {
    const Region strip = region_of(*contour_of(Rectangle{80, 5, 0}));
    EXPECT_TRUE(offset_round(strip, -2.6)->empty());
    EXPECT_TRUE(offset_mitred(strip, -2.6)->empty());
    const Contour dumbbell{{{0, 0},
                            {30, 0},
                            {30, 13},
                            {60, 13},
                            {60, 0},
                            {90, 0},
                            {90, 30},
                            {60, 30},
                            {60, 17},
                            {30, 17},
                            {30, 30},
                            {0, 30}},
                           0};
    EXPECT_EQ(offset_round(region_of(dumbbell), -2.5)->patches.size(), 2u);
}

TEST(Offset, OutAndInAgainClosesOnly) {
    Dice dice(65);
    for (int i = 0; i < 12; ++i) {
        const Region from = region_of(star(dice, 24, 25, 50));
        const Region back = *offset_round(*offset_round(from, 3), -3);
        EXPECT_GE(area(back), area(from) - 0.01 * perimeter(from));
        EXPECT_LE(area(*without(from, back)), 0.01 * perimeter(from)) << "closing never loses ground";
    }
}

TEST(OffsetKept, ConvexOutlinesKeepTheirCore) {
    const Contour rounded = *contour_of(Rectangle{60, 40, 8});
    EXPECT_EQ(*offset_kept(rounded, 3), (Contour{rounded.core, 11}));
    EXPECT_EQ(*offset_kept(rounded, -3), (Contour{rounded.core, 5}));
    const Contour smaller = *offset_kept(rounded, -9);
    EXPECT_NEAR(area(smaller), 42 * 22, 0.2);
}

TEST(OffsetKept, FreeOutlinesInClosedFormAndByTheLibraryAgree) {
    Dice dice(66);
    int closed = 0;
    for (int i = 0; i < 200; ++i) {
        const Contour outline = star(dice, dice.whole(5, 20), 25, 50);
        const double by = dice.real(-4, 4);
        const auto kept = offset_kept(outline, by);
        const Region twin = *offset_round(region_of(outline), by);
        if (!kept) {
            EXPECT_EQ(kept.error().code, "outline-vanishes");
            continue;
        }
        ++closed;
        EXPECT_NEAR(area(*kept), area(twin), 0.004 * perimeter(twin)) << "star " << i << " by " << by;
    }
    EXPECT_GT(closed, 150);
}

TEST(OffsetKept, RefusesWhatIsNoOutlineAnyMore) {
    EXPECT_EQ(offset_kept(*contour_of(Rectangle{60, 5, 0}), -3).error().code, "outline-vanishes");
    // a C whose mouth closes before its hollow does
    const Contour c{{{0, 0},
                     {60, 0},
                     {60, 28},
                     {50, 28},
                     {50, 10},
                     {10, 10},
                     {10, 50},
                     {50, 50},
                     {50, 32},
                     {60, 32},
                     {60, 60},
                     {0, 60}},
                    0};
    const auto closed = offset_kept(c, 3);
    ASSERT_FALSE(closed);
    EXPECT_EQ(closed.error().code, "outline-vanishes");
    EXPECT_NE(english(closed.error().what).find("island"), std::string::npos);
}

} // namespace
} // namespace drawercast::shape
