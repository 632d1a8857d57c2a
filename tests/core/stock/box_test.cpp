// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/box.h"
#include "stock/screws.h"

#include "core/stock/stock_scene.h"

#include <gtest/gtest.h>

namespace drawercast::stock {
namespace {

BoxIn worked_box(job::BoxCorner corner) {
    BoxIn in;
    in.drawer = "d1";
    in.width_mm = 480.9, in.depth_mm = 360.4, in.height_mm = 60.24;
    in.corner = corner;
    in.box_board = board("b16", 15.8);
    in.plate_board = board("b18", 18.1);
    return in;
}

TEST(Box, lapped_walls_run_over_the_ends_of_the_sides) {
    const Box box = box_of(worked_box(job::BoxCorner::lapped));
    EXPECT_DOUBLE_EQ(box.walls[0].length_mm, 512.5); // 480.9 + 2·15.8, sawn
    EXPECT_DOUBLE_EQ(box.walls[1].length_mm, 360.5);
    EXPECT_DOUBLE_EQ(box.width_mm, 480.9);
    EXPECT_DOUBLE_EQ(box.depth_mm, 360.5); // as the sides came out
    EXPECT_DOUBLE_EQ(box.height_mm, 60);
    EXPECT_DOUBLE_EQ(box.outside_width_mm, 512.5);
    EXPECT_DOUBLE_EQ(box.outside_depth_mm, 392.1);
    EXPECT_DOUBLE_EQ(box.outside_height_mm, 15.8 + 60 + 18.1);
    EXPECT_EQ(box.walls[1].end_screws, 0);
    EXPECT_GT(box.walls[0].end_screws, 0);
    EXPECT_EQ(box.parts.size(), 6U);
}

TEST(Box, pinwheel_walls_each_run_over_one_end) {
    const Box box = box_of(worked_box(job::BoxCorner::pinwheel));
    EXPECT_DOUBLE_EQ(box.walls[0].length_mm, 496.5); // 480.9 + 15.8 = 496.7
    EXPECT_DOUBLE_EQ(box.width_mm, 480.7);
    EXPECT_DOUBLE_EQ(box.walls[3].length_mm, 376);
    EXPECT_DOUBLE_EQ(box.depth_mm, 360.2);
    for (const Wall& wall : box.walls) EXPECT_EQ(wall.end_screws, box.walls[0].end_screws);
}

TEST(Box, joints_and_seal_are_counted) {
    const Box box = box_of(worked_box(job::BoxCorner::lapped));
    EXPECT_NEAR(box.bead_mm, 2 * (480.9 + 360.5) + 4 * 60, 1e-9);
    ASSERT_EQ(box.screws.size(), 1U); // feet and ends take the same
    EXPECT_DOUBLE_EQ(box.screws[0].length_mm, 50);
    EXPECT_EQ(box.screws[0].count, 6 + 6 + 5 + 5 + 4 * screws_along(60, 15, corner_pitch_mm)); // pitch ≤ 100
}

TEST(Screws, keep_their_skin_and_their_grip) {
    EXPECT_EQ(screw_length_mm(16, 60, 30), 50);
    EXPECT_EQ(screw_length_mm(16, 30, 30), 40); // 46 would be needed, 41 is allowed
    EXPECT_FALSE(screw_length_mm(16, 10, 20).has_value());
    EXPECT_EQ(screws_along(480, 30, 100), 6); // 420 in five
    EXPECT_EQ(screws_along(50, 30, 100), 2);
}

} // namespace
} // namespace drawercast::stock
