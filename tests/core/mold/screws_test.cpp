// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_checks.h"
#include "mold/screws.h"
#include "mold/walls.h"

#include <gtest/gtest.h>

namespace drawercast::mold {
namespace {

// Computed step by step from the Wood Handbook's form, and again in inches and pounds: within 0.03 %.
TEST(Screws, Withdrawal) {
    EXPECT_NEAR(withdrawal_n(Grain::face, 4, 30, 0.65), 2303.7, 0.1);
    EXPECT_NEAR(withdrawal_n(Grain::edge, 4, 30, 0.65), 1782.4, 0.1);
    EXPECT_NEAR(withdrawal_n(Grain::face, 4, 40, 0.65), 3348.6, 0.1);
    EXPECT_NEAR(withdrawal_n(Grain::edge, 5, 40, 0.70), 3323.4, 0.1);
    EXPECT_NEAR(withdrawal_n(Grain::face, 3.5, 16, 0.65), 945.7, 0.1);
    EXPECT_NEAR(withdrawal_n(Grain::edge, 4, 30, 0.605), 1542, 3);
    EXPECT_EQ(withdrawal_n(Grain::edge, 6, 2, 0.6), 0);
}

TEST(Screws, FitTheirWall) {
    job::Closure screw;
    screw.diameter_mm = 4;
    screw.length_mm = 50;
    EXPECT_TRUE(fits(screw, {16, 60, 0.6}));
    EXPECT_FALSE(fits(screw, {22, 60, 0.6}));      // 28 in the wall, 32 needed
    EXPECT_FALSE(fits(screw, {16, 38, 0.6}));      // its point would come within 5 mm of the base
    EXPECT_FALSE(fits(screw, {16 + 45, 60, 0.6})); // does not get through the stiffener
    EXPECT_EQ(capacity_n(screw, {61, 60, 0.6}), 0);
    job::Closure rod;
    rod.kind = job::ClosureKind::rod;
    rod.capacity_n = 6000;
    rod.diameter_mm = 8;
    rod.length_mm = 61 + 60 + 16 + 2 * (2 * 8); // two diameters at each end
    EXPECT_TRUE(fits(rod, {61, 60, 0.6, 16}));
    EXPECT_FALSE(fits(rod, {61, 60, 0.6, 16.5}));
    EXPECT_GE(2 * rod.diameter_mm, 6.8 + 1.6 + 2 * 1.25) << "nut ISO 4032, washer ISO 7089, two turns of M8";
    EXPECT_EQ(capacity_n(rod, {61, 60, 0.6}), 6000);
}

TEST(Screws, Drills) {
    job::Closure screw;
    screw.diameter_mm = 4;
    const Holes holes = holes_of(screw, {2, 2.5, 3, 3.5, 4, 4.5});
    EXPECT_EQ(holes.clearance_mm, 4.5) << "a thread that grips the plate holds it off the wall";
    EXPECT_EQ(holes.pilot_mm, 2.5);
    EXPECT_EQ(holes_of(screw, {3}).clearance_mm, 0);
    EXPECT_EQ(holes_of(screw, {6, 8, 10}), (Holes{6, 0})) << "a pilot as wide as the screw holds nothing";
    EXPECT_EQ(holes_of(screw, {8}), Holes{}) << "its head would go through";
    PlateDesign design;
    design.closure = design.end_closure = screw;
    EXPECT_TRUE(drill_checks(design, {2.5, 4.5}).empty());
    const auto missing = drill_checks(design, {4.5, 8});
    ASSERT_EQ(missing.size(), 1u);
    EXPECT_EQ(missing[0].code, layout::Code::drill_none);
    EXPECT_NEAR(missing[0].value, 2.27, 0.01);
    EXPECT_NEAR(missing[0].limit, 4.3, 1e-9);
}

TEST(Walls, LiftByLevy) {
    // Exact series to six digits, checked against Navier's double series.
    EXPECT_NEAR(held_plate_lift(1.0), 0.004062, 5e-7);
    EXPECT_NEAR(held_plate_lift(1.5), 0.007724, 5e-7);
    EXPECT_NEAR(held_plate_lift(2.0), 0.010129, 5e-7);
    EXPECT_NEAR(held_plate_lift(5.0), 0.012971, 5e-7);
    EXPECT_NEAR(held_plate_lift(1e4), 5.0 / 384, 1e-7);
}

TEST(Walls, MomentByLevy) {
    // Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., table 8, ν = 0.3.
    EXPECT_NEAR(held_plate_moment(1.0, 0.3), 0.0479, 5e-5);
    EXPECT_NEAR(held_plate_moment(1.5, 0.3), 0.0812, 5e-5);
    EXPECT_NEAR(held_plate_moment(2.0, 0.3), 0.1017, 5e-5);
    EXPECT_NEAR(held_plate_moment(3.0, 0.3), 0.1189, 5e-5);
    EXPECT_NEAR(held_plate_moment(5.0, 0.3), 0.1246, 5e-5);
    EXPECT_NEAR(held_plate_moment(1e4, 0.3), 0.125, 1e-6);
}

TEST(Walls, AreStressedAsAHeldPlate) {
    job::Board board;
    board.thickness_mm = 16, board.poisson = 0.3;
    const auto walls = walls_of({392, 360, 196, board, {20, 40}});
    ASSERT_EQ(walls.size(), 4u);
    EXPECT_NEAR(walls[0].stress_mpa, 6 * 0.1017 * 0.040 * 196 * 196 / (16 * 16),
                2e-3); // twice as long as high
    EXPECT_GT(walls[0].bow_mm, walls[1].bow_mm);
    EXPECT_EQ(walls[0].stress_mpa, walls[2].stress_mpa);
}

} // namespace
} // namespace drawercast::mold
