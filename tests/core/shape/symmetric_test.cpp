// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/symmetric.h"

#include <gtest/gtest.h>

#include <numbers>

namespace drawercast::shape {
namespace {

Contour of(std::initializer_list<Vec> corners) {
    Polygon polygon;
    for (const Vec p : corners) polygon.corners.push_back({p, 0});
    return *contour_of(polygon);
}

/// Kite: symmetric about its long diagonal by definition (Euclid's elements, I.8), turned by 20 degrees.
TEST(Symmetric, what_is_symmetric_stays_as_it_is) {
    const Contour kite = placed(of({{0, -60}, {25, 10}, {0, 35}, {-25, 10}}), {{12, 7}, 20});
    const auto found = symmetric_shape(kite);
    ASSERT_TRUE(found);
    EXPECT_LT(found->more_mm2, 1);
    EXPECT_LT(found->reach_mm, 0.05);
}

TEST(Symmetric, a_bump_is_mirrored_and_nothing_is_cut_off) {
    const Contour bumped = of({{0, 0}, {80, 0}, {80, 30}, {45, 30}, {43, 33}, {37, 33}, {35, 30}, {0, 30}});
    const auto found = symmetric_shape(bumped);
    ASSERT_TRUE(found);
    const auto contour = contour_of(found->polygon);
    ASSERT_TRUE(contour);
    for (const Vec p : bumped.core) EXPECT_TRUE(contains(placed(*contour, {}), p + (Vec{40, 15} - p) * 1e-4));
    EXPECT_NEAR(area(*contour), area(bumped) + found->more_mm2, 0.01);
    EXPECT_LE(found->reach_mm, 3.1);
}

/// An isosceles fit of this scalene triangle would share less than nine tenths.
TEST(Symmetric, what_has_no_axis_to_speak_of_gets_none) {
    EXPECT_FALSE(symmetric_shape(of({{0, 0}, {90, 0}, {10, 25}})));
}

TEST(Symmetric, a_circle_is_symmetric_about_any_axis) {
    const auto found = symmetric_shape(*contour_of(Circle{40}));
    ASSERT_TRUE(found);
    EXPECT_NEAR(area(*contour_of(found->polygon)), std::numbers::pi * 400, 2);
}

} // namespace
} // namespace drawercast::shape
