// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/easy.h"
#include "shape/gap.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <random>

namespace drawercast::shape {
namespace {

using Kind = EasyShape::Kind;

Contour free_outline(const std::vector<Vec>& points) {
    Polygon polygon;
    for (const Vec p : points) polygon.corners.push_back({p, 0});
    const auto contour = contour_of(polygon);
    EXPECT_TRUE(contour.has_value());
    return *contour;
}

std::optional<EasyShape> of_kind(const std::vector<EasyShape>& shapes, Kind kind) {
    for (const auto& shape : shapes)
        if (shape.kind == kind) return shape;
    return std::nullopt;
}

TEST(EasyShapes, an_upright_box_is_its_own_and_costs_nothing) {
    const auto shapes = easy_shapes(*contour_of(Rectangle{80, 50, 0}));
    ASSERT_EQ(shapes.size(), 1U);
    EXPECT_EQ(shapes[0].kind, Kind::rectangle);
    EXPECT_NEAR(shapes[0].more_mm2, 0, 1e-2);
    EXPECT_NEAR(shapes[0].reach_mm, 0, 1e-4);
}

TEST(EasyShapes, a_tilted_box_is_found_again) {
    for (const double turn : {10.0, 30.0, 61.0}) {
        const auto box = placed(*contour_of(Rectangle{100, 30, 0}), {{5, 7}, turn});
        const auto shapes = easy_shapes(box);
        EXPECT_EQ(shapes.front().kind, Kind::turned_rectangle) << turn;
        EXPECT_NEAR(shapes.front().more_mm2, 0, 1e-2);
        const auto straight = of_kind(shapes, Kind::rectangle);
        ASSERT_TRUE(straight);
        EXPECT_GT(straight->more_mm2, 500);
    }
}

TEST(EasyShapes, an_ell_is_two_rectangles) {
    const auto ell = free_outline({{0, 0}, {100, 0}, {100, 30}, {40, 30}, {40, 80}, {0, 80}});
    const auto shapes = easy_shapes(ell);
    ASSERT_EQ(shapes.front().kind, Kind::two_rectangles);
    EXPECT_NEAR(shapes.front().more_mm2, 0, 1e-2);
    const auto whole = of_kind(shapes, Kind::rectangle);
    ASSERT_TRUE(whole);
    EXPECT_NEAR(whole->more_mm2, 60 * 50, 1e-2);
    EXPECT_NEAR(whole->reach_mm, 50, 0.01); // from the corner (100, 80) straight down to (100, 30)
}

TEST(EasyShapes, a_round_thing_is_a_disc) {
    for (const double diameter : {20.0, 85.0}) {
        const auto shapes = easy_shapes(*contour_of(Circle{diameter}));
        ASSERT_EQ(shapes.front().kind, Kind::disc);
        EXPECT_NEAR(shapes.front().more_mm2, 0, 0.02 * diameter);
        EXPECT_LT(shapes.front().reach_mm, 0.01);
        const auto whole = of_kind(shapes, Kind::rectangle);
        ASSERT_TRUE(whole);
        EXPECT_NEAR(whole->reach_mm, diameter / 2 * (std::numbers::sqrt2 - 1), 0.01);
    }
}

/// An equilateral triangle's least disc is its circumcircle: r = side/√3 (Euclid IV.5).
TEST(EasyShapes, a_triangles_disc_is_its_circumcircle) {
    const double side = 90;
    const auto triangle = free_outline({{0, 0}, {side, 0}, {side / 2, side * std::sqrt(3.0) / 2}});
    const auto shapes = easy_shapes(triangle);
    const auto turned = of_kind(shapes, Kind::rectangle);
    ASSERT_TRUE(turned);
    for (const auto& shape : shapes)
        if (shape.kind == Kind::disc) {
            EXPECT_NEAR(area(*contour_of(shape.polygon)), std::numbers::pi * side * side / 3, 1);
        }
}

TEST(EasyShapes, every_one_holds_the_outline_and_says_what_it_costs) {
    std::mt19937 random(20310304);
    std::uniform_real_distribution<double> radius(10, 60);
    for (int round = 0; round < 60; ++round) {
        Polygon star;
        const int corners = 5 + round % 9;
        for (int i = 0; i < corners; ++i) {
            const double angle = 2 * std::numbers::pi * i / corners, r = radius(random);
            star.corners.push_back({{r * std::cos(angle), r * std::sin(angle)}, 0});
        }
        const auto contour = contour_of(star);
        if (!contour) continue;
        const auto shapes = easy_shapes(*contour);
        ASSERT_FALSE(shapes.empty());
        for (const auto& shape : shapes) {
            const auto easy = contour_of(shape.polygon);
            ASSERT_TRUE(easy.has_value()) << round;
            EXPECT_GE(gap_inside(*contour, *easy).mm, -1e-5) << round;
            EXPECT_NEAR(area(*easy) - area(*contour), shape.more_mm2, 1e-6);
            EXPECT_GE(shape.more_mm2, -1e-6);
        }
        EXPECT_TRUE(std::is_sorted(shapes.begin(), shapes.end(),
                                   [](const auto& a, const auto& b) { return a.more_mm2 < b.more_mm2; }));
    }
}

} // namespace
} // namespace drawercast::shape
