// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/level_lines.h"

#include <gtest/gtest.h>

namespace drawercast::air {
namespace {

Values field(const Mesh& mesh, double (*of)(shape::Vec)) {
    Values values(mesh.size(), 0.0);
    for_each_cell(mesh, [&](std::size_t cell) { values[cell] = of(mesh.center(cell)); });
    return values;
}

TEST(LevelLines, of_a_cone_is_one_closed_circle) {
    const Mesh mesh(100, 100, 2);
    const auto lines = level_lines(mesh,
                                   field(mesh,
                                         [](shape::Vec p) {
                                             return 1 + length(p - shape::Vec{50, 50});
                                         }),
                                   31);
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_EQ(lines[0].front(), lines[0].back());
    for (const shape::Vec p : lines[0]) EXPECT_NEAR(length(p - shape::Vec{50, 50}), 30, 0.1);
}

TEST(LevelLines, of_a_slope_is_one_open_straight_line) {
    const Mesh mesh(100, 60, 3);
    const auto lines = level_lines(mesh, field(mesh, [](shape::Vec p) { return 1 + p.x; }), 41.5);
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_EQ(lines[0].size(), 20u);
    for (const shape::Vec p : lines[0]) EXPECT_NEAR(p.x, 40.5, 1e-9);
}

TEST(LevelLines, stop_at_walls) {
    const Mesh mesh(100, 60, 4);
    const auto lines =
        level_lines(mesh, field(mesh, [](shape::Vec p) { return p.y > 24 && p.y < 36 ? 0 : 1 + p.x; }), 41.5);
    EXPECT_EQ(lines.size(), 2u);
}

TEST(LevelLines, keep_high_corners_of_a_saddle_apart) {
    const Mesh mesh(20, 20, 10);
    Values values(mesh.size(), 0.0);
    values[mesh.at(0, 0)] = values[mesh.at(1, 1)] = 3;
    values[mesh.at(1, 0)] = values[mesh.at(0, 1)] = 1;
    const auto lines = level_lines(mesh, values, 2);
    ASSERT_EQ(lines.size(), 2u);
    for (const shape::LevelLine& line : lines)
        EXPECT_NEAR(length(line.front() - line.back()), 5 * 1.41421356, 1e-6);
}

} // namespace
} // namespace drawercast::air
