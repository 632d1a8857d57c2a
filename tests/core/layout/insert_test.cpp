// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/layout/scene.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace drawercast::layout {
namespace {

using namespace testing;

constexpr double pi = std::numbers::pi;

job::Drawer with(shape::Given outline, std::vector<job::Obstruction> obstructions) {
    job::Drawer drawer = drawer_of(std::move(outline));
    drawer.obstructions = std::move(obstructions);
    return drawer;
}

TEST(Insert, IsTheDrawerLessItsGapExactly) {
    struct Row {
        const char* name;
        shape::Given outline;
        double gap_mm;
        shape::Box box;
        double area_mm2;
    };
    const Row rows[] = {
        {"rectangle", shape::Rectangle{480, 360, 0}, 0.5, {{0.5, 0.5}, {479.5, 359.5}}, 479.0 * 359},
        {"gap off the grid", shape::Rectangle{480, 360, 0}, 0.3, {{0.3, 0.3}, {479.7, 359.7}}, 479.4 * 359.4},
        {"press fit", shape::Rectangle{480, 360, 0}, -1, {{-1, -1}, {481, 361}}, 482.0 * 362},
        {"rounded", shape::Rectangle{480, 360, 10}, 2, {{2, 2}, {478, 358}}, 476.0 * 356 - (4 - pi) * 64},
        {"circle", shape::Circle{300}, 1, {{1, 1}, {299, 299}}, pi * 149 * 149},
        {"polygon",
         shape::Polygon{{{{-50, 10}, 0}, {{50, 10}, 0}, {{50, 90}, 0}, {{-50, 90}, 0}}},
         0,
         {{0, 0}, {100, 80}},
         8000},
        {"polygon inset",
         shape::Polygon{{{{0, 0}, 0}, {{100, 0}, 0}, {{100, 80}, 0}, {{0, 80}, 0}}},
         2,
         {{2, 2}, {98, 78}},
         96.0 * 76},
    };
    for (const Row& row : rows) {
        const auto insert = insert_of(with(row.outline, {}), row.gap_mm);
        ASSERT_TRUE(insert.has_value()) << row.name;
        EXPECT_NEAR(insert->box.min.x, row.box.min.x, 1e-9) << row.name;
        EXPECT_NEAR(insert->box.min.y, row.box.min.y, 1e-9) << row.name;
        EXPECT_NEAR(insert->box.max.x, row.box.max.x, 1e-9) << row.name;
        EXPECT_NEAR(insert->box.max.y, row.box.max.y, 1e-9) << row.name;
        EXPECT_NEAR(insert->area_mm2, row.area_mm2, 1e-6) << row.name;
        EXPECT_NEAR(shape::area(insert->area.region), row.area_mm2, 1)
            << row.name << ": the same over the grid";
        ASSERT_EQ(insert->edges.size(), 1U) << row.name;
        EXPECT_EQ(insert->thickness_mm, 60);
        EXPECT_NEAR(shape::bounds(insert->drawer.contour).min.x, 0, 1e-12) << row.name;
    }
}

TEST(Insert, ObstructionAtACornerIsCutOutWithItsGap) {
    const auto drawer =
        with(shape::Rectangle{480, 360, 0}, {{shape::Rectangle{30, 20, 0}, {{465, 350}, 0}, {}}});
    const auto insert = insert_of(drawer, 0.5);
    ASSERT_TRUE(insert.has_value());
    EXPECT_NEAR(insert->area_mm2, 479.0 * 359 - 30.0 * 20, 1e-6); // 449.5…479.5 × 339.5…359.5
    EXPECT_EQ(insert->edges.size(), 1U);
    EXPECT_EQ(insert->edges[0].contour.core.size(), 6U);
    ASSERT_EQ(insert->obstructions.size(), 1U);
    EXPECT_EQ(shape::bounds(insert->obstructions[0].contour), (shape::Box{{450, 340}, {480, 360}}));
}

TEST(Insert, PressFitLeavesNoFinsBesideAnObstruction) {
    const auto drawer =
        with(shape::Rectangle{480, 360, 0}, {{shape::Rectangle{30, 20, 0}, {{465, 350}, 0}, {}}});
    const auto insert = insert_of(drawer, -0.5);
    ASSERT_TRUE(insert.has_value());
    // The foam presses on the obstruction too: its corner moves out to (450.5, 340.5), and nothing stands
    // behind it.
    EXPECT_NEAR(insert->area_mm2, 481.0 * 361 - 30.0 * 20, 1e-6);
    EXPECT_FALSE(shape::contains(insert->edges[0].contour, {480.25, 350}));
}

TEST(Insert, AFreeObstructionIsAnExactHole) {
    const auto drawer = with(shape::Rectangle{480, 360, 0}, {{shape::Circle{40}, {{200, 100}, 0}, {}}});
    const auto insert = insert_of(drawer, 0.5);
    ASSERT_TRUE(insert.has_value());
    EXPECT_NEAR(insert->area_mm2, 479.0 * 359 - pi * 20.5 * 20.5, 1e-9);
    ASSERT_EQ(insert->edges.size(), 2U);
    EXPECT_EQ(insert->edges[1].contour, (shape::Contour{{{200, 100}}, 20.5}));
    ASSERT_EQ(insert->area.region.patches.size(), 1U);
    EXPECT_EQ(insert->area.region.patches[0].holes.size(), 1U);
    EXPECT_NEAR(shape::area(insert->area.region), insert->area_mm2, 0.5);
}

TEST(Insert, ObstructionsThatMeetMakeOneHole) {
    const auto drawer =
        with(shape::Rectangle{480, 360, 0}, {{shape::Rectangle{40, 40, 0}, {{200, 100}, 0}, {}},
                                             {shape::Rectangle{40, 40, 0}, {{230, 100}, 0}, {}}});
    const auto insert = insert_of(drawer, 1);
    ASSERT_TRUE(insert.has_value());
    EXPECT_EQ(insert->edges.size(), 2U);
    EXPECT_NEAR(insert->area_mm2, 478.0 * 358 - 72.0 * 42, 1e-6);
}

TEST(Insert, ATurnedObstructionKeepsItsMitredCorners) {
    const auto drawer =
        with(shape::Rectangle{480, 360, 0}, {{shape::Rectangle{60, 20, 0}, {{480, 180}, 30}, {}}});
    const auto insert = insert_of(drawer, 2);
    ASSERT_TRUE(insert.has_value());
    // Beside the right edge: the half of a 64 × 24 rectangle about (480, 180), cut at x = 478 (2 mm off its
    // middle), by a line at 60° to its long side: half the area less the strip of width 2 along a chord
    // 24/cos 30° long.
    const double chord = 24 / std::cos(pi / 6);
    EXPECT_NEAR(insert->area_mm2, 476.0 * 356 - (64.0 * 24 / 2 - 2 * chord), 0.3);
}

TEST(Insert, WhatDoesNotHangTogetherIsRefused) {
    const struct {
        const char* name;
        job::Drawer drawer;
        double gap_mm;
    } rows[] = {
        {"a bar right across",
         with(shape::Rectangle{480, 360, 0}, {{shape::Rectangle{20, 400, 0}, {{200, 180}, 0}, {}}}), 0},
        {"across but for the gap",
         with(shape::Rectangle{480, 360, 0}, {{shape::Rectangle{20, 359, 0}, {{200, 180}, 0}, {}}}), 0.5},
        {"nothing left", with(shape::Rectangle{18, 360, 0}, {}), 10},
        {"all obstructed",
         with(shape::Rectangle{480, 360, 0}, {{shape::Rectangle{500, 400, 0}, {{240, 180}, 0}, {}}}), 0},
        {"polygon in two by its gap",
         with(shape::Polygon{{{{0, 0}, 0},
                              {{40, 0}, 0},
                              {{40, 48}, 0},
                              {{80, 48}, 0},
                              {{80, 0}, 0},
                              {{120, 0}, 0},
                              {{120, 100}, 0},
                              {{80, 100}, 0},
                              {{80, 52}, 0},
                              {{40, 52}, 0},
                              {{40, 100}, 0},
                              {{0, 100}, 0}}},
              {}),
         3},
    };
    for (const auto& row : rows) {
        const auto insert = insert_of(row.drawer, row.gap_mm);
        ASSERT_FALSE(insert.has_value()) << row.name;
        EXPECT_EQ(insert.error().code, "insert-split") << row.name;
        EXPECT_EQ(english(insert.error().where), "d1") << row.name;
        EXPECT_EQ(check_of(insert.error(), {}).code, Code::insert_split);
    }
    EXPECT_TRUE(insert_of(rows[1].drawer, 0.2).has_value())
        << "0.1 mm of foam at both ends still hangs together";
}

} // namespace
} // namespace drawercast::layout
