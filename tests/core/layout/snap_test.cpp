// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/snap.h"

#include <gtest/gtest.h>

namespace drawercast::layout {
namespace {

using shape::Box;

SnapIn empty_insert(const Box& moving) { return {moving, {}, {{0, 0}, {400, 300}}, 12, 0, 3}; }

TEST(Snap, edge_of_the_insert_comes_before_everything) {
    auto in = empty_insert({{13, 100}, {63, 140}});
    in.neighbors = {{{{14, 200}, {64, 240}}, 10}};
    const auto snap = snapped(in);
    ASSERT_TRUE(snap.x);
    EXPECT_EQ(snap.x->reason, SnapReason::edge);
    EXPECT_DOUBLE_EQ(snap.x->shift_mm, -1);
}

TEST(Snap, wall_beside_a_neighbor) {
    auto in = empty_insert({{102, 100}, {152, 140}});
    in.neighbors = {{{{40, 90}, {90.5, 130}}, 10}};
    const auto snap = snapped(in);
    ASSERT_TRUE(snap.x);
    EXPECT_EQ(snap.x->reason, SnapReason::wall);
    EXPECT_DOUBLE_EQ(snap.x->shift_mm, -1.5);
}

TEST(Snap, no_wall_to_a_neighbor_that_is_not_beside) {
    auto in = empty_insert({{102, 200}, {152, 240}});
    in.neighbors = {{{{40, 90}, {90.5, 130}}, 10}};
    EXPECT_FALSE(snapped(in).x);
}

TEST(Snap, equal_walls_between_two) {
    auto in = empty_insert({{101, 100}, {131, 140}});
    in.neighbors = {{{{40, 90}, {60, 130}}, 10}, {{{170, 95}, {190, 150}}, 10}};
    const auto snap = snapped(in);
    ASSERT_TRUE(snap.x);
    EXPECT_EQ(snap.x->reason, SnapReason::equal_walls);
    EXPECT_DOUBLE_EQ(snap.x->shift_mm, -1);
}

TEST(Snap, a_row_goes_on_with_its_wall) {
    auto in = empty_insert({{116, 100}, {136, 140}});
    in.neighbors = {{{{40, 100}, {60, 140}}, 10}, {{{77, 100}, {97, 140}}, 10}};
    const auto snap = snapped(in);
    ASSERT_TRUE(snap.x);
    EXPECT_EQ(snap.x->reason, SnapReason::equal_walls);
    EXPECT_DOUBLE_EQ(snap.x->shift_mm, -2);
}

TEST(Snap, centers_before_sides_before_grid) {
    auto in = empty_insert({{200, 100}, {240, 140}});
    in.grid_mm = 5;
    in.neighbors = {{{{30, 99}, {60, 142}}, 10}};
    auto snap = snapped(in);
    ASSERT_TRUE(snap.y);
    EXPECT_EQ(snap.y->reason, SnapReason::centers_in_line);
    EXPECT_DOUBLE_EQ(snap.y->shift_mm, 0.5);
    in.neighbors[0].box = {{30, 98}, {60, 180}};
    snap = snapped(in);
    EXPECT_EQ(snap.y->reason, SnapReason::sides_in_line);
    EXPECT_DOUBLE_EQ(snap.y->shift_mm, -2);
    in.neighbors.clear();
    snap = snapped(in);
    EXPECT_EQ(snap.y->reason, SnapReason::grid);
    EXPECT_DOUBLE_EQ(snap.y->shift_mm, 0);
}

TEST(Snap, nothing_beyond_the_radius) {
    auto in = empty_insert({{200, 100}, {240, 140}});
    in.neighbors = {{{{30, 60}, {60, 92}}, 10}};
    const auto snap = snapped(in);
    EXPECT_FALSE(snap.x);
    EXPECT_FALSE(snap.y);
}

/// What snapped once stays: the target is then met exactly, and nothing of higher priority is nearer.
TEST(Snap, snapping_again_moves_nothing) {
    for (int step = 0; step < 200; ++step) {
        const double x = 12 + step * 1.7;
        const double y = 20 + step * 1.1;
        auto in = empty_insert({{x, y}, {x + 40, y + 30}});
        in.grid_mm = 5;
        in.neighbors = {
            {{{100, 100}, {150, 160}}, 10}, {{{200, 40}, {260, 90}}, 11}, {{{180, 200}, {220, 240}}, 10}};
        for (int round = 0; round < 4; ++round) {
            const auto shift = snapped(in).shift();
            in.moving = {in.moving.min + shift, in.moving.max + shift};
        }
        const auto again = snapped(in).shift();
        EXPECT_NEAR(again.x, 0, 1e-9) << step;
        EXPECT_NEAR(again.y, 0, 1e-9) << step;
    }
}

} // namespace
} // namespace drawercast::layout
