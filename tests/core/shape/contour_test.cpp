// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/contour.h"
#include "shape/simple.h"

#include "core/shape/random_shapes.h"

#include <gtest/gtest.h>

namespace drawercast::shape {
namespace {

using namespace testing;

TEST(Turn, WholeQuartersAreExact) {
    const Vec p{3, 1};
    EXPECT_EQ(Turn::of_degrees(0)(p), (Vec{3, 1}));
    EXPECT_EQ(Turn::of_degrees(90)(p), (Vec{-1, 3}));
    EXPECT_EQ(Turn::of_degrees(180)(p), (Vec{-3, -1}));
    EXPECT_EQ(Turn::of_degrees(-90)(p), (Vec{1, -3}));
    EXPECT_EQ(Turn::of_degrees(3690)(p), (Vec{-1, 3}));
}

TEST(Turn, AgreesWithTheAngle) {
    for (double degrees = -720; degrees <= 720; degrees += 7.5) {
        const Turn turn = Turn::of_degrees(degrees);
        EXPECT_NEAR(turn.cosine, std::cos(degrees * pi / 180), 1e-14);
        EXPECT_NEAR(turn.sine, std::sin(degrees * pi / 180), 1e-14);
    }
}

/// Steiner's formula and the traced ring are two ways to one figure; chords lose at most sagitta times
/// perimeter.
TEST(Contour, ClosedFormsAgreeWithTheTrace) {
    Dice dice(11);
    for (int i = 0; i < 500; ++i) {
        const Contour outline = placed(any_outline(dice), any_pose(dice, 300));
        const Ring ring = traced(outline);
        const double lost = area(outline) - area(ring);
        EXPECT_GE(lost, -1e-8);
        EXPECT_LE(lost, perimeter(outline) * chord_sagitta_mm + 1e-8);
        EXPECT_NEAR(perimeter(outline), perimeter(ring), 1e-3 * perimeter(outline));
        EXPECT_GE(perimeter(outline), perimeter(ring) - 1e-9);
        const Box exact = bounds(outline);
        const Box drawn = bounds(ring);
        EXPECT_NEAR(exact.min.x, drawn.min.x, chord_sagitta_mm + 1e-9);
        EXPECT_NEAR(exact.max.y, drawn.max.y, chord_sagitta_mm + 1e-9);
        EXPECT_FALSE(first_meeting(tidied(ring)));
    }
}

/// A reflex core with a round radius: an L whose corner is rounded outside and sharp inside.
TEST(Contour, ReflexCornersCountTheirTangent) {
    const Contour l{{{0, 0}, {60, 0}, {60, 20}, {20, 20}, {20, 60}, {0, 60}}, 4};
    // ring + sides·ρ + five quarter discs − the square where the two inner strips overlap
    EXPECT_NEAR(area(l), 2000 + 240 * 4 + 5 * pi * 4 - 16, 1e-9);
    EXPECT_NEAR(perimeter(l), 240 + 10 * pi - 8, 1e-9);
    EXPECT_NEAR(area(traced(l)), area(l), perimeter(l) * chord_sagitta_mm);
}

TEST(Contour, CoarserTracesStayInside) {
    const Contour outline = *contour_of(Rectangle{60, 40, 12});
    for (const double sagitta : {0.001, 0.01, 0.1, 1.0, 5.0, 50.0}) {
        const Ring ring = traced(outline, sagitta);
        EXPECT_GE(ring.size(), 8u);
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const Vec middle = (ring[i] + ring[(i + 1) % ring.size()]) * 0.5;
            EXPECT_TRUE(contains(outline, ring[i]));
            EXPECT_TRUE(contains(outline, middle));
        }
    }
}

TEST(Contour, PlacedKeepsSizeAndMovesTheCenter) {
    Dice dice(12);
    for (int i = 0; i < 300; ++i) {
        const Contour outline = any_outline(dice);
        const Pose pose = any_pose(dice, 400);
        const Contour there = placed(outline, pose);
        EXPECT_NEAR(area(there), area(outline), 1e-7);
        EXPECT_NEAR(perimeter(there), perimeter(outline), 1e-9);
        EXPECT_EQ(convex(there), convex(outline));
        EXPECT_NEAR(length(centroid(there) - placed(centroid(outline), pose)), 0, 1e-8);
    }
}

TEST(Contour, CentroidOfKnownShapes) {
    EXPECT_EQ(centroid(*contour_of(Rectangle{30, 20, 5})), (Vec{0, 0}));
    EXPECT_EQ(centroid(*contour_of(Circle{30})), (Vec{0, 0}));
    const Vec triangle = centroid(*contour_of(Polygon{{{{0, 0}}, {{30, 0}}, {{0, 60}}}}));
    EXPECT_NEAR(triangle.x, 10, 1e-12);
    EXPECT_NEAR(triangle.y, 20, 1e-12);
    // a half disc: 4r/(3π) above its diameter
    EXPECT_NEAR(centroid(*contour_of(Polygon{{{{-10, 0}, 0}, {{10, 0}, 10}}})).y, 40 / (3 * pi), 1e-3);
}

TEST(Contour, ContainsAgreesWithTheTrace) {
    Dice dice(13);
    for (int i = 0; i < 200; ++i) {
        const Contour outline = any_outline(dice);
        const Contour drawn{traced(outline), 0};
        for (int k = 0; k < 40; ++k) {
            const Vec p{dice.real(-45, 45), dice.real(-45, 45)};
            const bool in = contains(outline, p);
            EXPECT_TRUE(in || !contains(drawn, p));
            if (in && !contains(drawn, p)) { // between the arc and its chord
                double nearest = 1e9;
                for (std::size_t j = 0; j < drawn.core.size(); ++j)
                    nearest = std::min(nearest, length(p - drawn.core[j]));
                EXPECT_LT(nearest, 0.5);
            }
        }
        EXPECT_TRUE(contains(outline, outline.core[0]));
        EXPECT_FALSE(contains(outline, {200, 200}));
    }
}

TEST(Contour, BoundaryPointsAreContained) {
    const Contour r = *contour_of(Rectangle{30, 20, 0});
    EXPECT_TRUE(contains(r, {15, 0}));
    EXPECT_TRUE(contains(r, {15, 10}));
    EXPECT_FALSE(contains(r, {15.001, 0}));
    EXPECT_TRUE(contains(*contour_of(Circle{10}), {3, 4}));
    EXPECT_FALSE(contains(*contour_of(Circle{10}), {3.001, 4}));
}

TEST(Contour, ConvexMeansNoReflexCorner) {
    Dice dice(14);
    for (int i = 0; i < 50; ++i) EXPECT_TRUE(convex(placed(convex_ring(dice, 40, 30), any_pose(dice, 300))));
    EXPECT_FALSE(convex(Contour{{{0, 0}, {20, 0}, {20, 20}, {10, 5}, {0, 20}}, 0}));
    EXPECT_TRUE(convex(Contour{{{0, 0}, {10, 0}, {20, 0}, {20, 20}, {0, 20}}, 0})) << "a corner on a side";
}

} // namespace
} // namespace drawercast::shape
