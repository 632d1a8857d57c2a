// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/level_lines.h"

#include <gtest/gtest.h>

#include <functional>

namespace drawercast::shape {
namespace {

/// Values at the centers of square cells.
struct Cells {
    double pitch_mm = 1;
    std::size_t across = 0;
    std::size_t deep = 0;
    std::function<double(Vec)> of;

    std::size_t columns() const { return across; }
    std::size_t rows() const { return deep; }
    double value(GridNode node) const { return of(place(node)); }
    Vec place(GridNode node) const {
        return {(static_cast<double>(node.column) + 0.5) * pitch_mm,
                (static_cast<double>(node.row) + 0.5) * pitch_mm};
    }
};

TEST(LevelLines, of_a_cone_is_one_closed_circle) {
    const Vec top{50, 50};
    const Cells cells{2, 50, 50, [&](Vec p) { return length(p - top); }};
    const auto lines = LevelTracer(cells, 30).lines();
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_EQ(lines[0].front(), lines[0].back());
    for (const Vec p : lines[0]) EXPECT_NEAR(length(p - top), 30, 0.1);
}

TEST(LevelLines, of_a_slope_is_one_open_straight_line) {
    const Cells cells{3, 34, 20, [](Vec p) { return p.x; }};
    const auto lines = LevelTracer(cells, 40.6).lines();
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_EQ(lines[0].size(), 20u);
    for (const Vec p : lines[0]) EXPECT_NEAR(p.x, 40.6, 1e-9);
}

TEST(LevelLines, keep_high_corners_of_a_saddle_apart) {
    const Cells cells{10, 2, 2, [](Vec p) { return (p.x < 10) == (p.y < 10) ? 3 : 1; }};
    const auto lines = LevelTracer(cells, 2).lines();
    ASSERT_EQ(lines.size(), 2u);
    for (const LevelLine& line : lines) EXPECT_NEAR(length(line.front() - line.back()), 5 * 1.41421356, 1e-6);
}

} // namespace
} // namespace drawercast::shape
