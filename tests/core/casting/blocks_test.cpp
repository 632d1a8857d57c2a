// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/blocks.h"
#include "shape/gap.h"

#include "core/casting/builders.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace drawercast::casting {
namespace {

using shape::Circle;
using shape::Rectangle;

double inside(const shape::Contour& outline, shape::Vec p) {
    return shape::gap_inside(shape::Contour{{p}, 0}, outline).mm;
}

BoardIn board_in() {
    BoardIn in;
    in.insert = built::insert(300, 200, 50);
    in.shrinkage = 0.02;
    const auto box = built::form({built::cut(Rectangle{60, 30, 0}, 30)});
    in.pockets = {{built::pocket("a#1", box, {{50, 40}, 0}), "A"},
                  {built::pocket("b#1", box, {{60, 150}, 0}), "B"},
                  {built::pocket("c#1", box, {{220, 155}, 0}), "C"}};
    return in;
}

TEST(PatternBoard, is_mirrored_and_enlarged) {
    const BoardIn in = board_in();
    const PatternBoard board = *pattern_board_of(in);
    const double k = 1 / 0.98;
    EXPECT_DOUBLE_EQ(board.enlargement, k);
    EXPECT_DOUBLE_EQ(board.box.max.x, 300 * k);
    EXPECT_DOUBLE_EQ(board.box.max.y, 200 * k);
    EXPECT_DOUBLE_EQ(board.height_mm, 50 * k);
    // what lies front left in the drawer lies front right on the board
    const auto& front = board.blocks.back();
    EXPECT_EQ(front.subject, "a#1");
    EXPECT_NEAR(front.center.x_mm, 250 * k, 1e-9);
    EXPECT_NEAR(front.center.y_mm, 40 * k, 1e-9);
    EXPECT_NEAR(front.height_mm, 30 * k, 1e-9);
    EXPECT_NEAR(front.parts.at(0).wood_height_mm, 30 * k - 0.1, 1e-9);
    EXPECT_NEAR(shape::area(front.parts.at(0).cut.outline.contour), 1800 * k * k, 1e-6);
    for (const auto& screw : front.fixing)
        EXPECT_GE(inside(front.parts.at(0).cut.outline.contour, screw.at.vec()), 15 - 1e-6);
}

TEST(PatternBoard, numbers_run_from_the_back_row_by_row_as_the_board_is_seen) {
    const PatternBoard board = *pattern_board_of(board_in());
    ASSERT_EQ(board.blocks.size(), 3u);
    const char* expected[] = {"c#1", "b#1", "a#1"}; // mirrored: c stands left of b
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(board.blocks[static_cast<std::size_t>(i)].number, i + 1);
        EXPECT_EQ(board.blocks[static_cast<std::size_t>(i)].subject, expected[i]);
    }
}

TEST(PatternBoard, areas_add_up) {
    const PatternBoard board = *pattern_board_of(board_in());
    const double k = board.enlargement;
    const double pi = 3.14159265358979324;
    // three blocks and 5 mm of clay round each, not enlarged
    const double clay = 3 * (1800 * k * k + 180 * k * 5 + pi * 25);
    EXPECT_NEAR(shape::area(board.clay.region), clay, 0.2);
    EXPECT_NEAR(shape::area(board.opening.region), 60000 * k * k, 0.5);
    EXPECT_NEAR(shape::area(board.fillers.region), 0, 0.5);
}

TEST(PatternBoard, all_of_the_box_outside_the_insert_is_filler) {
    BoardIn in = board_in();
    in.pockets.clear();
    layout::Insert insert = *in.insert;
    const shape::Contour ell{{{0, 0}, {300, 0}, {300, 150}, {240, 150}, {240, 200}, {0, 200}}, 0};
    insert.area.region = shape::region_of(ell);
    insert.edges = {{ell}};
    in.insert = std::make_shared<const layout::Insert>(insert);
    const PatternBoard board = *pattern_board_of(in);
    const double k = board.enlargement;
    ASSERT_EQ(board.fillers.region.patches.size(), 1u);
    EXPECT_NEAR(shape::area(board.fillers.region), 3000 * k * k, 0.2);
    EXPECT_NEAR(shape::bounds(board.fillers.region).max.x, 60 * k, 0.002); // back right becomes back left
}

TEST(PatternBoard, through_block_is_as_high_as_the_walls_and_pieces_apart_are_each_fixed) {
    BoardIn in = board_in();
    auto through = built::cut(Circle{50}, 50, {{-60, 0}, 0});
    through.through = true;
    in.pockets = {
        {built::pocket("t#1", built::form({through, built::cut(Rectangle{50, 45, 0}, 20, {{40, 0}, 0})}),
                       {{150, 100}, 90}),
         "T"}};
    const PatternBoard board = *pattern_board_of(in);
    const Block& block = board.blocks.at(0);
    EXPECT_DOUBLE_EQ(block.height_mm, board.height_mm);
    EXPECT_TRUE(block.parts.at(0).cut.through);
    EXPECT_EQ(block.fixing.size(), 4u);
}

TEST(PatternBoard, each_piece_of_wood_that_stands_on_the_board_is_held) {
    BoardIn in = board_in();
    // A notch across a block sticks out 11 mm on either side; one within a deeper level stands on the other.
    auto notch = built::cut(shape::Capsule{62, 28}, 20, {{0, 0}, 90});
    in.pockets = {
        {built::pocket("n#1", built::form({built::cut(Rectangle{140, 40, 0}, 40), notch}), {{150, 100}, 30}),
         "N"},
        {built::pocket(
             "s#1", built::form({built::cut(Rectangle{80, 40, 0}, 16), built::cut(Rectangle{30, 20, 0}, 40)}),
             {{150, 40}, 0}),
         "S"}};
    const PatternBoard board = *pattern_board_of(in);
    const auto count = [&](const char* subject, int part, int piece, Holder by) {
        for (const Block& block : board.blocks)
            if (block.subject == subject)
                return std::count_if(block.fixing.begin(), block.fixing.end(), [&](const FixingPoint& point) {
                    return point.part == part && point.piece == piece && point.by == by;
                });
        return std::ptrdiff_t{-1};
    };
    EXPECT_EQ(count("n#1", 0, 0, Holder::screw), 2);
    for (const int piece : {0, 1}) {
        EXPECT_EQ(count("n#1", 1, piece, Holder::thin_screw), 1);
        EXPECT_EQ(count("n#1", 1, piece, Holder::pin), 1);
    }
    EXPECT_EQ(count("s#1", 0, 0, Holder::screw), 2);
    EXPECT_EQ(count("s#1", 1, 0, Holder::screw), 0);
    // Every hole lies in wood of its own: in the notch, and outside the block it butts.
    for (const Block& block : board.blocks)
        for (const FixingPoint& point : block.fixing) {
            const auto part = static_cast<std::size_t>(point.part);
            EXPECT_GE(inside(block.parts[part].cut.outline.contour, point.at.vec()), 3 - 1e-3);
            if (point.part != 1 || block.subject != "n#1") continue;
            EXPECT_LE(inside(block.parts[0].cut.outline.contour, point.at.vec()), -3 + 1e-3);
        }
}

} // namespace
} // namespace drawercast::casting
