// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/fillers.h"
#include "shape/gap.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace drawercast::casting {
namespace {

using shape::Ring;
using shape::Vec;

PatternBoard board_with(const std::vector<Ring>& outlines) {
    PatternBoard board;
    for (const Ring& ring : outlines) board.fillers.region.patches.push_back({ring, {}});
    return board;
}

Ring box(double x, double y, double w, double h) { return {{x, y}, {x + w, y}, {x + w, y + h}, {x, y + h}}; }

double inside(const Ring& ring, Vec p) {
    const shape::Contour outline{ring, 0};
    return shape::contains(outline, p) ? shape::gap_inside(shape::Contour{{p}, 0}, outline).mm : -1;
}

void expect_held(const Filler& filler) {
    for (const Vec screw : filler.screws) EXPECT_GE(inside(filler.outline, screw), filler_edge_mm);
    const shape::Box around = shape::bounds(shape::Contour{filler.outline, 0});
    for (double y = around.min.y; y <= around.max.y; y += 3)
        for (double x = around.min.x; x <= around.max.x; x += 3) {
            if (inside(filler.outline, {x, y}) < 0) continue;
            const bool near = std::any_of(filler.screws.begin(), filler.screws.end(), [&](Vec screw) {
                return length(screw - Vec{x, y}) <= filler_pitch_mm + 5;
            });
            EXPECT_TRUE(near) << x << ", " << y;
        }
}

TEST(Fillers, a_small_one_has_one_screw_in_its_middle) {
    const auto fillers = fillers_of(board_with({box(10, 20, 30, 20)}));
    ASSERT_EQ(fillers.size(), 1u);
    ASSERT_EQ(fillers[0].screws.size(), 1u);
    EXPECT_NEAR(fillers[0].screws[0].x, 25, 1);
    EXPECT_NEAR(fillers[0].screws[0].y, 30, 1);
}

TEST(Fillers, a_long_strip_has_a_screw_near_all_of_it) {
    const auto fillers = fillers_of(board_with({box(0, 0, 480, 24)}));
    ASSERT_EQ(fillers.size(), 1u);
    EXPECT_GE(fillers[0].screws.size(), 3u);
    EXPECT_LE(fillers[0].screws.size(), 5u);
    expect_held(fillers[0]);
}

TEST(Fillers, both_arms_of_an_angle_are_held) {
    const auto fillers =
        fillers_of(board_with({{{0, 0}, {300, 0}, {300, 25}, {25, 25}, {25, 260}, {0, 260}}}));
    ASSERT_EQ(fillers.size(), 1u);
    EXPECT_GE(fillers[0].screws.size(), 3u);
    expect_held(fillers[0]);
}

TEST(Fillers, one_too_slim_for_a_screw_is_glued_and_slivers_are_none) {
    const auto fillers = fillers_of(board_with({box(0, 0, 200, 10), box(300, 300, 4, 4)}));
    ASSERT_EQ(fillers.size(), 1u);
    EXPECT_TRUE(fillers[0].screws.empty());
}

TEST(Fillers, are_numbered_from_the_back_left_to_right) {
    const auto fillers =
        fillers_of(board_with({box(0, 0, 30, 30), box(200, 150, 30, 30), box(0, 150, 30, 30)}));
    ASSERT_EQ(fillers.size(), 3u);
    EXPECT_DOUBLE_EQ(fillers[0].outline[0].x, 0);
    EXPECT_DOUBLE_EQ(fillers[0].outline[0].y, 150);
    EXPECT_DOUBLE_EQ(fillers[1].outline[0].x, 200);
    EXPECT_DOUBLE_EQ(fillers[2].outline[0].y, 0);
    for (int i = 0; i < 3; ++i) EXPECT_EQ(fillers[static_cast<std::size_t>(i)].number, i + 1);
}

} // namespace
} // namespace drawercast::casting
