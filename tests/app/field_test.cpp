// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/field.h"
#include "sheets/magnitude_ladder.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace drawercast::sheets {
namespace {

template <class Value>
Field sampled(std::vector<double> x, std::vector<double> y, Value value) {
    Field field{std::move(x), std::move(y), {}};
    for (const double at_y : field.y_mm)
        for (const double at_x : field.x_mm) field.values.push_back(value(at_x, at_y));
    return field;
}

std::vector<double> lines(double from, double to, int count) {
    std::vector<double> out;
    for (int i = 0; i <= count; ++i) out.push_back(from + (to - from) * i / count);
    return out;
}

double enclosed(const std::vector<Vec>& loop) {
    double twice = 0;
    for (std::size_t i = 0; i < loop.size(); ++i) twice += cross(loop[i], loop[(i + 1) % loop.size()]);
    return std::abs(twice) / 2;
}

TEST(Field, a_cones_line_is_a_circle) {
    const auto cone = sampled(lines(-50, 50, 100), lines(-50, 50, 100),
                              [](double x, double y) { return 50 - std::hypot(x, y); });
    const auto loops = level_loops(cone, 20);
    ASSERT_EQ(loops.size(), 1u);
    EXPECT_NEAR(enclosed(loops.front()) / (std::numbers::pi * 30 * 30), 1, 0.002);
}

TEST(Field, a_line_that_leaves_the_field_comes_back_along_its_edge) {
    const auto slope = sampled({0, 30, 100}, {0, 60}, [](double x, double) { return x; });
    const auto loops = level_loops(slope, 40);
    ASSERT_EQ(loops.size(), 1u);
    EXPECT_NEAR(enclosed(loops.front()), 60 * 60, 1e-9);
    EXPECT_TRUE(level_loops(slope, 101).empty());
    EXPECT_NEAR(enclosed(level_loops(slope, -1).front()), 100 * 60, 1e-9) << "all of it";
}

TEST(Field, two_hills_are_two_loops_and_a_ring_has_a_hole) {
    const auto hills = sampled(lines(0, 100, 50), lines(0, 40, 20), [](double x, double y) {
        return std::max(10 - std::hypot(x - 20, y - 20), 10 - std::hypot(x - 80, y - 20));
    });
    EXPECT_EQ(level_loops(hills, 3).size(), 2u);
    const auto ring = sampled(lines(-50, 50, 50), lines(-50, 50, 50),
                              [](double x, double y) { return 10 - std::abs(std::hypot(x, y) - 30); });
    EXPECT_EQ(level_loops(ring, 5).size(), 2u);
}

/// Slopes by parabolas are exact for parabolas, so between inner lines nothing is off; the given values stay.
TEST(Field, refining_keeps_the_values_and_a_parabolas_shape) {
    const auto bow = [](double x, double y) { return 1 - x * x / 400 - y * y / 900; };
    const auto coarse = sampled({-20, -12, -5, 4, 9, 20}, {-30, -10, 0, 15, 30}, bow);
    const Field fine = refined(coarse, 2);
    for (const double x : coarse.x_mm)
        for (const double y : coarse.y_mm) EXPECT_NEAR(value_at(fine, {x, y}), bow(x, y), 1e-12);
    for (std::size_t column = 0; column < fine.x_mm.size(); ++column)
        for (std::size_t row = 0; row < fine.y_mm.size(); ++row) {
            const double x = fine.x_mm[column], y = fine.y_mm[row];
            if (x >= -12 && x <= 9 && y >= -10 && y <= 15) {
                EXPECT_NEAR(fine.at(column, row), bow(x, y), 1e-12);
            }
        }
}

TEST(Bands, have_round_steps_no_more_than_the_ladder_and_cover_the_most) {
    for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch, job::DisplayUnits::inch_32})
        for (double most = 0.013; most < 9; most *= 1.37) {
            const Bands bands = lift_bands(most, units);
            EXPECT_LE(bands.count, magnitude_bands) << most;
            EXPECT_GE(bands.level(bands.count), most * (1 - 1e-9));
            EXPECT_LT(bands.level(bands.count - 1), most);
            EXPECT_EQ(bands.figures.size(), static_cast<std::size_t>(bands.count) + 1);
        }
    EXPECT_EQ(lift_bands(0.62, job::DisplayUnits::mm).figures.back(), "0.7");
    EXPECT_EQ(lift_bands(0, job::DisplayUnits::mm).count, 0);
}

} // namespace
} // namespace drawercast::sheets
