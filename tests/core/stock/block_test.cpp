// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/block.h"

#include "core/stock/stock_scene.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace drawercast::stock {
namespace {

using shape::Capsule;
using shape::Circle;
using shape::Rectangle;
using testing::ElementsAre;

BlockIn block(std::vector<BodyIn> bodies) { return {"d1", "i1#1", "logger", 7, std::move(bodies)}; }

TEST(Block, a_height_that_boards_give_is_left_as_they_give_it) {
    // 15.8 + 15.8 + 12.1 = 43.7: a quarter of a millimeter off is within half a saw step.
    const auto made = block_by_stock(block({{outline(Rectangle{140.2, 90.2, 0}), 43.9}}), block_shop());
    ASSERT_EQ(made.bodies.size(), 1U);
    EXPECT_THAT(made.bodies[0].layers, ElementsAre("b16", "b16", "b12"));
    EXPECT_DOUBLE_EQ(made.bodies[0].height_mm, 43.7);
    EXPECT_EQ(made.bodies[0].stack.saw_off_mm, 0);
    EXPECT_EQ(made.bodies[0].panel, (Panel{140, 90}));
    ASSERT_EQ(made.parts.size(), 3U);
    EXPECT_EQ(made.parts[0].finish, Finish::rectangle);
    EXPECT_EQ(made.parts[2].label, "d1 7a.3");
    EXPECT_DOUBLE_EQ(made.glue_mm2, 2 * 140 * 90);
}

TEST(Block, any_other_height_is_sawn_from_the_next_stack) {
    const auto made = block_by_stock(block({{outline(Rectangle{140.2, 90.2, 0}), 41.3}}), block_shop());
    EXPECT_DOUBLE_EQ(made.bodies[0].height_mm, 41.5);
    EXPECT_DOUBLE_EQ(made.bodies[0].stack.stack.height_mm, 43.7);
    EXPECT_NEAR(made.bodies[0].stack.saw_off_mm, 2.2, 1e-9);
}

TEST(Block, a_deeper_level_inside_a_shallower_one_stands_on_it) {
    const auto made = block_by_stock(
        block({{outline(Rectangle{140, 90, 0}), 15.8}, {outline(Rectangle{60, 40, 0}), 43.7}}), block_shop());
    ASSERT_EQ(made.bodies.size(), 2U);
    EXPECT_EQ(made.bodies[0].rest, Rest::on_board);
    EXPECT_EQ(made.bodies[1].rest, Rest::on_body);
    EXPECT_EQ(made.bodies[1].other, 0);
    EXPECT_NEAR(made.bodies[1].height_mm, 27.9, 1e-9);
    EXPECT_NEAR(made.bodies[1].top_mm, 43.7, 1e-9);
}

TEST(Block, a_notch_across_butts_the_deeper_body_from_both_sides) {
    const auto made = block_by_stock(
        block({{outline(Rectangle{140, 40, 0}), 43.7}, {outline(Capsule{90, 28}), 20, {}, 0, true}}),
        block_shop());
    // The capsule lies along x like the rectangle and is hidden in it; turned across it sticks out twice.
    BlockIn across = block({{outline(Rectangle{140, 40, 0}), 43.7}});
    across.bodies.push_back({shape::placed(outline(Capsule{90, 28}), {{0, 0}, 90}), 20, {}, 0, true});
    const auto stepped = block_by_stock(across, block_shop());
    EXPECT_EQ(made.bodies.size(), 1U);
    ASSERT_EQ(stepped.bodies.size(), 3U);
    for (int i : {1, 2}) {
        const Body& body = stepped.bodies[static_cast<std::size_t>(i)];
        EXPECT_EQ(body.rest, Rest::butts);
        EXPECT_EQ(body.other, 0);
        EXPECT_EQ(body.panel, (Panel{28, 25})); // (90 − 40)/2 out of the side
    }
}

TEST(Block, a_circle_is_a_tube_where_one_is_near_and_discs_where_none_is) {
    const auto tube = block_by_stock(block({{outline(Circle{51.2}), 40}}), block_shop());
    ASSERT_TRUE(tube.bodies[0].tube.has_value());
    EXPECT_EQ(tube.bodies[0].tube->tube.name, "Pipe 50");
    EXPECT_NEAR(tube.bodies[0].tube->wrap_mm, 0.5, 1e-9);
    ASSERT_EQ(tube.tubes.size(), 1U);
    EXPECT_DOUBLE_EQ(tube.tubes[0].length_mm, 40);
    EXPECT_EQ(std::count_if(tube.parts.begin(), tube.parts.end(),
                            [](const Part& part) { return part.finish == Finish::disc; }),
              2);
    const auto discs = block_by_stock(block({{outline(Circle{64}), 31.6}}), block_shop());
    EXPECT_EQ(discs.bodies[0].make, Make::discs);
    EXPECT_THAT(discs.bodies[0].layers, ElementsAre("b16", "b16"));
}

TEST(Block, a_lying_round_is_half_a_tube_on_a_riser) {
    BodyIn lying{outline(Rectangle{120.2, 75.2, 0}), 49.6, 37.6, 12.1};
    const auto made = block_by_stock(block({lying}), block_shop());
    const Body& body = made.bodies[0];
    EXPECT_EQ(body.make, Make::half_tube);
    EXPECT_EQ(body.tube->tube.name, "Pipe 75");
    EXPECT_THAT(body.layers, ElementsAre("b12"));
    EXPECT_NEAR(body.height_mm, 12.1 + 37.5, 0.01);
    EXPECT_EQ(body.ends, 2);
    lying.axis_mm = -10; // less than half a round: planed
    EXPECT_EQ(block_by_stock(block({lying}), block_shop()).bodies[0].make, Make::shaped);
}

TEST(Block, screws_are_as_long_as_base_and_block_allow) {
    const auto body_of = [](double height_mm, Held held) {
        BodyIn asked{outline(Rectangle{140, 90, 0}), height_mm};
        asked.held = {held};
        return block_by_stock(block({asked}), block_shop()).bodies.at(0);
    };
    EXPECT_EQ(body_of(43.7, {2, 4, 0}).screw_mm, 40); // 15.8 + 20 and up to what is sold
    EXPECT_EQ(body_of(15.8, {2, 4, 0}).screw_mm, 25); // keeps 5 mm of the block's 15.8
    const Body thin = body_of(43.7, {1, 3, 1});
    EXPECT_EQ(thin.held, (Held{1, 3, 1}));
    EXPECT_EQ(thin.pin_mm, 30); // 15.8 + 15, whole millimeters
}

TEST(Block, a_body_too_low_for_screws_is_pinned_and_one_too_low_for_pins_glued) {
    const auto held_at = [](double height_mm) {
        return block_by_stock(block({{outline(Rectangle{140, 90, 0}), height_mm}}), block_shop())
            .bodies.at(0);
    };
    const Body low = held_at(11);
    EXPECT_FALSE(low.screw_mm.has_value());
    EXPECT_EQ(low.pin_mm, 24); // 15.8 + 11 less 2 of skin, whole millimeters
    EXPECT_EQ(low.held.screws, 0);
    EXPECT_EQ(low.held.pins, 2);
    const Body flat = held_at(4);
    EXPECT_FALSE(flat.pin_mm.has_value());
    EXPECT_EQ(flat.held.pins, 0);
}

TEST(Block, what_stands_on_another_body_has_no_screws_of_its_own) {
    const auto made = block_by_stock(
        block({{outline(Rectangle{140, 90, 0}), 15.8}, {outline(Rectangle{60, 40, 0}), 43.7}}), block_shop());
    EXPECT_EQ(made.bodies[0].held.screws, 2);
    EXPECT_EQ(made.bodies[1].held, (Held{0, 4, 0}));
}

TEST(Panels, take_the_side_that_needs_least) {
    const auto turned = shape::placed(outline(Rectangle{100, 30, 0}), {{5, 9}, 37});
    EXPECT_NEAR(panel_of(turned).length_mm, 100, 1e-9);
    EXPECT_NEAR(panel_of(turned).width_mm, 30, 1e-9);
    EXPECT_NEAR(panel_of(outline(Capsule{90, 28})).length_mm, 90, 1e-9);
    EXPECT_NEAR(panel_of(outline(Circle{28})).width_mm, 28, 1e-9);
}

TEST(Stacks, the_nearest_sum_of_measured_boards) {
    const std::vector<job::Board> boards{board("a", 15.8), board("b", 12.1), board("c", 18.2)};
    EXPECT_NEAR(nearest_stack(45, boards).height_mm, 46.1, 1e-9); // 18.2 + 15.8 + 12.1; 43.7 and 46.1 compete
    EXPECT_NEAR(nearest_stack(1, boards).height_mm, 12.1, 1e-9);
    EXPECT_NEAR(depth_from_boards_mm(45, boards, 1 / (1 - 0.004), 0.1), (46.1 + 0.1) * 0.996, 1e-6);
}

TEST(Stacks, blocks_are_made_of_what_is_at_hand) {
    const std::vector<job::Board> all{board("a", 15.8, 1), board("b", 12.1), board("c", 18.2, 2)};
    const auto boards = boards_for_blocks(all, all[0], all[1]);
    ASSERT_EQ(boards.size(), 3U); // those at hand, and what the box is made of anyway
    EXPECT_EQ(boards[0].name, "a");
    EXPECT_EQ(boards[1].name, "c");
    EXPECT_EQ(boards[2].name, "b");
}

TEST(Block, one_that_reaches_the_plate_is_neither_higher_nor_lower_than_asked) {
    // 15.8 + 12.1 + 15.8 = 43.7 would do within half a saw step; under the plate it would hold it open.
    BlockIn through = block({{outline(Rectangle{140.2, 90.2, 0}), 43.6}});
    through.bodies[0].through = true;
    const auto made = block_by_stock(through, block_shop());
    EXPECT_DOUBLE_EQ(made.bodies[0].height_mm, 43.6);
    EXPECT_NEAR(made.bodies[0].stack.saw_off_mm, 0.1, 1e-9);
    through.bodies[0].height_mm = 43.8; // the nearest stack is too low
    const auto higher = block_by_stock(through, block_shop());
    EXPECT_DOUBLE_EQ(higher.bodies[0].height_mm, 43.8);
    EXPECT_GT(higher.bodies[0].stack.stack.height_mm, 43.8);
}

} // namespace
} // namespace drawercast::stock
