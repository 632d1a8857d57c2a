// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/minimums.h"

#include <gtest/gtest.h>

namespace drawercast::layout {
namespace {

using job::Firmness;

TEST(Minimums, WallsByFoamAndDepth) {
    struct Row {
        const char* name;
        Firmness firmness;
        double depth_mm, wall_mm;
    };
    const Row rows[] = {
        {"firm, shallow: the least", Firmness::firm, 40, 10},
        {"firm, deep: a quarter", Firmness::firm, 60, 15},
        {"medium, shallow: the least", Firmness::medium, 38, 11},
        {"medium, deep: 1/3.5", Firmness::medium, 70, 20},
        {"soft, shallow: the least", Firmness::soft, 36, 12},
        {"soft, deep: a third", Firmness::soft, 60, 20},
    };
    for (const Row& row : rows)
        EXPECT_DOUBLE_EQ(minimums_of({}, row.firmness).wall(row.depth_mm), row.wall_mm) << row.name;
}

TEST(Minimums, EdgesAndFloorsByDepthAndWeight) {
    const Minimums minimums = minimums_of({}, Firmness::medium);
    EXPECT_EQ(minimums.edge(50), 12);
    EXPECT_EQ(minimums.edge(50.1), 15);
    EXPECT_EQ(minimums.floor(false), 12);
    EXPECT_EQ(minimums.floor(true), 15);
}

TEST(Minimums, WhatTheJobSetsHoldsEverywhere) {
    job::Minimums own;
    own.wall_mm = 8;
    own.wall_ratio = 5;
    own.edge_mm = 9;
    own.floor_mm = 7;
    const Minimums minimums = minimums_of(own, Firmness::soft);
    EXPECT_EQ(minimums.wall(20), 8);
    EXPECT_EQ(minimums.wall(50), 10);
    EXPECT_EQ(minimums.edge(80), 9);
    EXPECT_EQ(minimums.floor(true), 7);

    own = {};
    own.wall_mm = 8; // one alone leaves the rest by foam
    EXPECT_EQ(minimums_of(own, Firmness::soft).wall(60), 20);
}

TEST(Minimums, MendBelowSixtyPercent) {
    EXPECT_EQ(severity_below(6.0, 10), Severity::look);
    EXPECT_EQ(severity_below(5.99, 10), Severity::mend);
    EXPECT_EQ(severity_below(-1, 10), Severity::mend);
    EXPECT_FALSE(below(10, 10));
    EXPECT_FALSE(below(9.9995, 10)); // what rounding leaves of a wall that is right
    EXPECT_TRUE(below(9.99, 10));
}

} // namespace
} // namespace drawercast::layout
