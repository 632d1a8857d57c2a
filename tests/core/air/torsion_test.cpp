// SPDX-License-Identifier: GPL-3.0-or-later
// Rectangles against the torsion of bars.
#include "air/torsion.h"

#include "core/air/floors.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace drawercast::air {
namespace {

/// Greatest u of −Δu = 1 in a rectangle, u = 0 around it (Timoshenko and Goodier's series).
double torsion(double a, double b) {
    if (a < b) std::swap(a, b);
    double sum = 0;
    for (int n = 1; n < 60; n += 2)
        sum += ((n / 2) % 2 == 0 ? 1 : -1) / (std::pow(n, 3) * std::cosh(n * std::numbers::pi * a / (2 * b)));
    return b * b / 8 - 4 * b * b / std::pow(std::numbers::pi, 3) * sum;
}

TEST(Slowness, torsion_series_gives_the_published_greatest_stress_of_bars) {
    // Greatest stress of a square bar is 0.675·Gθ·2a (Timoshenko and Goodier, table of k; from memory); of
    // the function itself the middle of a square of side 1 is 0.0737 (Roark gives its neighbors only).
    EXPECT_NEAR(torsion(1, 1), 0.07367, 1e-5);
    EXPECT_NEAR(torsion(1000, 1), 0.125, 1e-6); // a long strip: b²/8
}

class OfRectangle : public ::testing::TestWithParam<std::pair<double, double>> {};

TEST_P(OfRectangle, is_the_torsion_function_over_the_square_of_the_gap) {
    const auto [a, b] = GetParam();
    Floor floor = empty_floor(a + 41.3, b + 37.7, 60);
    add_block(floor, 19.1, 18.2, a, b, 52);
    const auto slow = slowness_of(floor, cells_of(floor, 4));
    ASSERT_EQ(slow.size(), 1u);
    const double expected = torsion(a, b) / (8 * 8);
    EXPECT_NEAR(slow[0].phi, expected, 0.01 * expected);
    EXPECT_LT(length(slow[0].at - shape::Vec{19.1 + a / 2, 18.2 + b / 2}), 5);
}

INSTANTIATE_TEST_SUITE_P(Slowness, OfRectangle,
                         ::testing::Values(std::pair(300.0, 220.0), std::pair(100.0, 100.0),
                                           std::pair(90.0, 180.0), std::pair(201.0, 53.0)));

TEST(Slowness, of_eight_mm_over_300_by_220_is_71_9) {
    EXPECT_NEAR(torsion(300, 220) / 64, 71.9, 0.05); // engineering figure of the trade case worked by hand
    Floor floor = empty_floor(340, 260, 60);
    add_block(floor, 20, 20, 300, 220, 52);
    EXPECT_NEAR(slowness_of(floor, cells_of(floor, 4)).at(0).phi, 71.9, 0.5);
}

TEST(Slowness, a_side_at_the_wall_lets_nothing_in) {
    Floor floor = empty_floor(80, 300, 60);
    add_block(floor, 0, 0, 80, 100, 52); // open at one end: as half of a strip of 200
    EXPECT_NEAR(slowness_of(floor, cells_of(floor, 4)).at(0).phi, 200.0 * 200 / 8 / 64, 1);
}

TEST(Slowness, a_floor_that_foam_cannot_reach_is_left_out) {
    Floor floor = empty_floor(80, 100, 60);
    add_block(floor, 0, 0, 80, 100, 52);
    EXPECT_TRUE(slowness_of(floor, cells_of(floor, 4)).empty());
}

} // namespace
} // namespace drawercast::air
