// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/blocks.h"
#include "shape/gap.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace drawercast::casting {
namespace {

using shape::Contour;
using shape::InMold;
using shape::Outline;
using shape::Vec;

double inside(const Contour& contour, shape::Point<InMold> p) {
    return shape::gap_inside(Contour{{p.vec()}, 0}, contour).mm;
}

Contour given(const shape::Given& outline) { return *shape::contour_of(outline); }

TEST(FixingPoints, stand_well_inside_along_a_side) {
    const auto points = fixing_points(Outline<InMold>{given(shape::Rectangle{160, 80, 0})});
    ASSERT_EQ(points.size(), 2u);
    EXPECT_NEAR(std::abs(points[0].x_mm), 65, 0.6);
    EXPECT_NEAR(points[0].y_mm, 0, 1e-9);
    struct Row {
        shape::Given outline;
        double least; ///< the inset, or nearly half the width where that is less
    };
    const Row rows[] = {
        {shape::Rectangle{160, 24, 0}, 11.9},
        {shape::Capsule{120, 26}, 12.9},
        {shape::Circle{92}, 14.9},
        {shape::Polygon{{{{0, 0}}, {{90, 0}}, {{90, 20}}, {{20, 20}}, {{20, 80}}, {{0, 80}}}},
         8}, // arms 20 wide
    };
    for (const auto& row : rows) {
        const Contour contour = given(row.outline);
        const auto two = fixing_points(Outline<InMold>{contour});
        ASSERT_EQ(two.size(), 2u);
        for (const auto& p : two) EXPECT_GE(inside(contour, p), row.least);
    }
}

TEST(FixingPoints, a_short_block_gets_one) {
    for (const shape::Given& outline :
         {shape::Given(shape::Rectangle{30, 20, 0}), shape::Given(shape::Circle{35})}) {
        const auto one = fixing_points(Outline<InMold>{given(outline)});
        ASSERT_EQ(one.size(), 1u);
        EXPECT_NEAR(one[0].x_mm, 0, 1e-9);
    }
}

class Board : public ::testing::Test {
  protected:
    /// A 200 × 100 insert, 50 thick, with an obstruction cut out at its back right, and pockets as given.
    static BoardIn board_in() {
        job::Drawer drawer;
        drawer.id = "d1";
        drawer.outline = shape::Rectangle{200, 100, 0};
        drawer.insert_mm = 50;
        drawer.obstructions = {{shape::Rectangle{40, 20, 0}, {{180, 90}, 0}, {}}};
        BoardIn in;
        in.insert = std::make_shared<const layout::Insert>(*layout::insert_of(drawer, 0));
        in.pockets = {{pocket("left#1", {40, 50}, 20), "Left"}, {pocket("right#1", {120, 50}, 30), "Right"}};
        return in;
    }
    static std::shared_ptr<const layout::PlacedPocket> pocket(const char* subject, Vec at, double depth) {
        job::Object object;
        object.id = "o";
        object.levels = {{job::Sunk{shape::Rectangle{50, 30, 0}, depth}, {}, {}}};
        auto form = std::make_shared<const layout::PocketForm>(*layout::pocket_form(object, {}, {0, 0}, 50));
        job::Pocket placed;
        placed.pose = {at, 0};
        auto made = layout::place(placed, form);
        made.subject = subject;
        return std::make_shared<const layout::PlacedPocket>(std::move(made));
    }
};

TEST_F(Board, is_mirrored_and_enlarged) {
    auto in = board_in();
    in.shrinkage = 0.2 / 1.2; // k = 1.2, so that everything is easily seen
    const auto board = pattern_board_of(in);
    ASSERT_TRUE(board);
    EXPECT_NEAR(board->enlargement, 1.2, 1e-12);
    EXPECT_NEAR(board->box.width(), 240, 1e-9);
    EXPECT_NEAR(board->height_mm, 60, 1e-9);
    ASSERT_EQ(board->blocks.size(), 2u);
    // What lies left in the drawer stands right on the board; reading order starts with the other one.
    EXPECT_EQ(board->blocks[0].name, "Right");
    EXPECT_EQ(board->blocks[0].number, 1);
    EXPECT_NEAR(board->blocks[0].center.x_mm, (200 - 120) * 1.2, 1e-9);
    EXPECT_NEAR(board->blocks[0].height_mm, 36, 1e-9);
    EXPECT_NEAR(board->blocks[0].parts[0].wood_height_mm, 36 - in.film_mm, 1e-9);
    EXPECT_NEAR(shape::area(board->blocks[0].parts[0].cut.outline.contour), 1500 * 1.44, 1e-6);
}

TEST_F(Board, fillers_and_opening_make_the_box) {
    const auto board = pattern_board_of(board_in());
    ASSERT_TRUE(board);
    EXPECT_NEAR(shape::area(board->fillers.region) + shape::area(board->opening.region), 200 * 100, 0.1);
    EXPECT_NEAR(shape::area(board->fillers.region), 800, 0.1);
    EXPECT_NEAR(shape::bounds(board->fillers.region).min.x, 0,
                1e-3); // back right in the drawer: back left here
}

TEST_F(Board, clay_reaches_the_fillet_around_every_foot) {
    auto in = board_in();
    in.fillet_mm = 5;
    const auto board = pattern_board_of(in);
    ASSERT_TRUE(board);
    const double one = 1500 + 160 * 5 + 3.14159265 * 25; // Steiner
    EXPECT_NEAR(shape::area(board->clay.region), 2 * one, 1);
    in.fillet_mm = 0;
    EXPECT_NEAR(shape::area(pattern_board_of(in)->clay.region), 3000, 0.5);
}

} // namespace
} // namespace drawercast::casting
