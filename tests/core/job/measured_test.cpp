// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/measured.h"
#include "shape/vec.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <random>
#include <string>

namespace drawercast::job {
namespace {

using shape::Vec;

/// A drawer with straight sides by its corners, as a perfect tape would read it.
struct Quad {
    Vec front_left, front_right, back_left, back_right;
};

Taped taped(const Quad& q) {
    const auto between = [](Vec a, Vec b) { return shape::length(b - a); };
    const auto middle = [](Vec a, Vec b) { return (a + b) * 0.5; };
    return {between(q.front_left, q.front_right),
            between(middle(q.front_left, q.back_left), middle(q.front_right, q.back_right)),
            between(q.back_left, q.back_right),
            between(q.front_left, q.back_left),
            between(middle(q.front_left, q.front_right), middle(q.back_left, q.back_right)),
            between(q.front_right, q.back_right),
            between(q.front_left, q.back_right),
            between(q.back_left, q.front_right)};
}

Quad box(double width, double depth) { return {{0, 0}, {width, 0}, {0, depth}, {width, depth}}; }

struct Case {
    std::string name;
    Taped top;
    std::optional<Taped> bottom;
    double width_mm, depth_mm;
    double tolerance_mm;
};

Case of(std::string name, const Quad& q, double width, double depth, double tolerance = 1e-5) {
    return {std::move(name), taped(q), std::nullopt, width, depth, tolerance};
}

std::vector<Case> cases() {
    std::vector<Case> all{
        of("square corners", box(480, 360), 480, 360),
        of("as deep as wide", box(400, 400), 400, 400),
        of("skewed 6, wider than deep", {{0, 0}, {480, 0}, {6, 360}, {486, 360}}, 474, 360),
        of("skewed 6 the other way", {{0, 0}, {480, 0}, {-6, 360}, {474, 360}}, 474, 360),
        of("skewed 6, deeper than wide", {{0, 0}, {300, 0}, {6, 600}, {306, 600}}, 299.985, 597.030, 0.01),
        of("back narrower, evenly", {{0, 0}, {480, 0}, {4, 360}, {476, 360}}, 472, 360),
        of("front narrower, evenly", {{4, 0}, {476, 0}, {0, 360}, {480, 360}}, 472, 360),
        of("back narrower on the left only", {{0, 0}, {480, 0}, {8, 360}, {480, 360}}, 472, 360),
        of("left side shorter", {{0, 0}, {480, 0}, {0, 355}, {480, 360}}, 480, 355),
        // skew beyond the taper: the left leans in by 7, the right out by 1, of which nothing is usable
        of("tapered and skewed", {{0, 0}, {480, 0}, {7, 360}, {481, 360}}, 473, 360, 0.02),
    };
    Taped bowed = taped(box(480, 360));
    bowed.middle_width_mm = 476;
    all.push_back({"sides bowed in by 4", bowed, std::nullopt, 476, 360, 1e-5});
    bowed = taped(box(480, 360));
    bowed.middle_width_mm = 484;
    bowed.middle_depth_mm = 361;
    all.push_back({"sides bowed out", bowed, std::nullopt, 480, 360, 1e-5});
    // leaning in by 4 each over the depth: at half depth the walls stand in by 2, a bow of 5 by 7 on either
    // one
    bowed = taped({{0, 0}, {480, 0}, {4, 360}, {476, 360}});
    bowed.middle_width_mm = 471;
    all.push_back({"tapered and bowed", bowed, std::nullopt, 469, 360, 1e-3});
    all.push_back({"narrower at the bottom", taped(box(480, 360)), taped(box(470, 352)), 470, 352, 1e-5});
    all.push_back({"narrower at the top", taped(box(470, 352)), taped(box(480, 360)), 470, 352, 1e-5});
    all.push_back(
        {"top narrower, bottom shallower", taped(box(470, 360)), taped(box(480, 352)), 470, 352, 1e-5});
    return all;
}

TEST(Measured, table) {
    for (const Case& c : cases()) {
        SCOPED_TRACE(c.name);
        const auto inside = largest_inside(c.top, c.bottom);
        ASSERT_TRUE(inside.has_value()) << one_line(inside.error());
        EXPECT_NEAR(inside->width_mm, c.width_mm, c.tolerance_mm);
        EXPECT_NEAR(inside->depth_mm, c.depth_mm, c.tolerance_mm);
        EXPECT_LE(inside->disagree_mm, 1e-5);
    }
}

TEST(Measured, says_what_was_lost) {
    const auto skewed = largest_inside(taped({{0, 0}, {480, 0}, {6, 360}, {486, 360}}), std::nullopt);
    ASSERT_TRUE(skewed.has_value());
    EXPECT_NEAR(skewed->width_lost.skew_mm, 6, 1e-5);
    EXPECT_NEAR(skewed->width_lost.uneven_mm, 0, 1e-5);
    EXPECT_NEAR(skewed->depth_lost.skew_mm, std::hypot(6, 360) - 360,
                1e-5); // its sides are longer than it is deep

    const auto tapered = largest_inside(taped(box(480, 360)), taped(box(472, 359)));
    ASSERT_TRUE(tapered.has_value());
    EXPECT_NEAR(tapered->width_lost.uneven_mm, 8, 1e-5);
    EXPECT_NEAR(tapered->width_lost.skew_mm, 0, 1e-5);
    EXPECT_NEAR(tapered->depth_lost.uneven_mm, 1, 1e-5);
}

TEST(Measured, tells_reading_errors_from_skew) {
    Taped read = taped(box(480, 360));
    read.rising_mm += 1;
    read.falling_mm += 1; // both a little long: no skew in it
    auto inside = largest_inside(read, std::nullopt);
    ASSERT_TRUE(inside.has_value());
    EXPECT_NEAR(inside->width_mm, 480, 0.01);
    EXPECT_NEAR(inside->depth_mm, 360, 0.01);
    EXPECT_NEAR(inside->disagree_mm, 1, 0.01);

    read.rising_mm += 40;
    inside = largest_inside(read, std::nullopt);
    ASSERT_FALSE(inside.has_value());
    EXPECT_EQ(inside.error().code, "measured-disagree");
    EXPECT_EQ(english(inside.error().where), "top");
}

TEST(Measured, refuses_readings_that_are_none) {
    for (const double wrong : {0.0, -3.0, 5000.1, std::numeric_limits<double>::quiet_NaN(),
                               std::numeric_limits<double>::infinity()}) {
        Taped bottom = taped(box(480, 360));
        bottom.middle_depth_mm = wrong;
        const auto inside = largest_inside(taped(box(480, 360)), bottom);
        ASSERT_FALSE(inside.has_value()) << wrong;
        EXPECT_EQ(inside.error().code, "measured-range");
        EXPECT_EQ(english(inside.error().where), "bottom");
    }
    Taped impossible = taped(box(480, 360));
    impossible.left_mm = 2000;
    EXPECT_FALSE(largest_inside(impossible, std::nullopt).has_value());
}

/// How far inside `q` a rectangle turned by `angle` with its front-left corner at `at` lies: the least of the
/// signed distances of its corners from the walls.
double clearance(const Quad& q, Vec at, double angle, Vec sides) {
    const Vec along{std::cos(angle), std::sin(angle)};
    const Vec back{-along.y, along.x};
    const std::array<Vec, 4> wall{q.front_left, q.front_right, q.back_right, q.back_left};
    double least = std::numeric_limits<double>::infinity();
    for (const Vec p : {at, at + along * sides.x, at + back * sides.y, at + along * sides.x + back * sides.y})
        for (std::size_t i = 0; i < 4; ++i) {
            const Vec side = wall[(i + 1) % 4] - wall[i];
            least = std::min(least, shape::cross(side, p - wall[i]) / shape::length(side));
        }
    return least;
}

/// The greatest value of a function with one hill.
template <class Function>
double top_of(double low, double high, Function f) {
    for (int third = 0; third < 30; ++third) {
        const double step = (high - low) / 3;
        if (f(low + step) < f(high - step))
            low += step;
        else
            high -= step;
    }
    return f((low + high) / 2);
}

/// The most room that a rectangle can have in `q`, wherever it lies and however it is turned.
double most_room(const Quad& q, Vec sides) {
    return top_of(-0.05, 0.05, [&](double angle) {
        return top_of(-30, 30, [&](double x) {
            return top_of(-30, 30, [&](double y) { return clearance(q, {x, y}, angle, sides); });
        });
    });
}

TEST(Measured, twin_by_trying_rectangles_in_the_drawer) {
    std::mt19937 random(20260304);
    std::uniform_real_distribution<double> off(-5, 5);
    std::uniform_real_distribution<double> size(250, 700);
    for (int round = 0; round < 12; ++round) {
        SCOPED_TRACE(round);
        const double w = size(random);
        const double d = size(random);
        const Quad q{{0, 0}, {w, 0}, {off(random), d + off(random)}, {w + off(random), d + off(random)}};
        const auto inside = largest_inside(taped(q), std::nullopt);
        ASSERT_TRUE(inside.has_value()) << one_line(inside.error());
        const Vec sides{inside->width_mm, inside->depth_mm};
        EXPECT_GT(most_room(q, sides), -0.02); // it goes in
        // and one that is larger both ways does not: what was given away is of second order
        EXPECT_LT(most_room(q, sides + Vec{0.9, 0.9}), 0);
        const Taped t = taped(q);
        EXPECT_LE(sides.x, std::min({t.front_mm, t.middle_width_mm, t.back_mm}) + 1e-6);
        EXPECT_LE(sides.y, std::min({t.left_mm, t.middle_depth_mm, t.right_mm}) + 1e-6);
    }
}

} // namespace
} // namespace drawercast::job
