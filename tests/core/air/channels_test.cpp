// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/pour_map.h"

#include "core/air/floors.h"

#include <gtest/gtest.h>

#include <numeric>

namespace drawercast::air {
namespace {

struct Cut {
    explicit Cut(Floor floor) : mold(std::move(floor), 4, 5) {
        widths = widths_of(mold.floor, mold.cells);
        channels = channels_of(mold.cells, widths);
        fed = fed_by(mold.cells, channels, mold.rise.full(mold.pieces));
    }
    Worked mold;
    Values widths;
    Channels channels;
    std::vector<int> fed;
};

TEST(Channels, one_around_a_block_of_even_width_is_one) {
    Floor floor = empty_floor(200, 160, 60);
    add_block(floor, 30, 30, 140, 100, 45);
    EXPECT_EQ(Cut(std::move(floor)).channels.all.size(), 1u);
}

TEST(Channels, are_cut_where_a_slot_lies_between_wider_ones) {
    Floor floor = empty_floor(300, 200, 60);
    add_block(floor, 40, 40, 100, 120, 45);
    add_block(floor, 152, 40, 108, 120, 45); // 12 mm between them, 40 around
    const Cut cut(std::move(floor));
    ASSERT_EQ(cut.channels.all.size(), 2u);
    const int slot = cut.channels.channel[cut.mold.cells.mesh.holding({146, 100})];
    EXPECT_NE(slot, cut.channels.channel[cut.mold.cells.mesh.holding({10, 10})]);
    EXPECT_NEAR(cut.channels.all[static_cast<std::size_t>(slot)].width_mm, 12, 1e-3);
    EXPECT_NEAR(cut.channels.all[static_cast<std::size_t>(slot)].middle.x, 146, 4);
    EXPECT_NEAR(cut.channels.all[static_cast<std::size_t>(slot)].middle.y, 100, 4);
}

TEST(Channels, a_slot_that_is_not_much_narrower_is_none_of_its_own) {
    Floor floor = empty_floor(300, 200, 60);
    add_block(floor, 40, 40, 100, 120, 45);
    add_block(floor, 173, 40, 87, 120, 45); // 33 of 40
    EXPECT_EQ(Cut(std::move(floor)).channels.all.size(), 1u);
}

TEST(Channels, a_dead_end_belongs_to_what_it_opens_into) {
    Floor floor = empty_floor(300, 200, 60);
    add_block(floor, 40, 40, 100, 160, 45); // up to the wall behind
    add_block(floor, 152, 40, 108, 160, 45);
    EXPECT_EQ(Cut(std::move(floor)).channels.all.size(), 1u);
}

TEST(PourMap, shares_all_the_liquid_and_says_slots_first) {
    Floor floor = empty_floor(300, 200, 60);
    add_block(floor, 40, 40, 100, 120, 45);
    add_block(floor, 151, 40, 109, 120, 45);
    const Cut cut(std::move(floor));
    const PourMap map = pour_map_of(600, {}, 60, cut.mold.cells, cut.channels, cut.fed);
    ASSERT_EQ(map.steps.size(), 2u);
    EXPECT_EQ(map.steps[0].kind, PourKind::slot);
    EXPECT_EQ(map.steps[1].kind, PourKind::channel);
    EXPECT_NEAR(map.steps[0].ml + map.steps[1].ml, 600, 1e-6);
    // A slot of 11 mm feeds itself and at most half of both floors.
    const double room = std::accumulate(cut.mold.cells.room_mm3.begin(), cut.mold.cells.room_mm3.end(), 0.0);
    EXPECT_GT(map.steps[0].ml, 600 * 11.0 * 120 * 60 / room);
    EXPECT_LT(map.steps[0].ml, 600 * (11.0 * 120 * 60 + 0.5 * 209 * 120 * 15) / room);
}

TEST(PourMap, a_pour_that_is_set_is_taken_off_its_channel) {
    Floor floor = empty_floor(300, 200, 60);
    add_block(floor, 40, 40, 100, 120, 45);
    add_block(floor, 151, 40, 109, 120, 45);
    const Cut cut(std::move(floor));
    const PourMap map =
        pour_map_of(600, {{{10, 10}, 200}, {{90, 100}, 30}}, 60, cut.mold.cells, cut.channels, cut.fed);
    double sum = 0;
    for (const PourStep& step : map.steps) sum += step.ml;
    EXPECT_NEAR(sum, 600, 1e-6);
    EXPECT_EQ(map.set_ml, 230);
    ASSERT_EQ(map.steps.size(), 4u);
    EXPECT_EQ(map.steps[0].kind, PourKind::slot);
    EXPECT_EQ(map.steps[1].kind, PourKind::top);
    EXPECT_EQ(map.steps[1].ml, 30);
}

TEST(PourMap, spoonfuls_go_with_their_neighbor) {
    Floor floor = empty_floor(300, 200, 60);
    add_block(floor, 40, 40, 100, 120, 45);
    add_block(floor, 151, 40, 109, 120, 45);
    Cut cut(std::move(floor));
    join_small(1e9, cut.mold.cells, cut.widths, cut.channels, cut.fed);
    EXPECT_EQ(cut.channels.all.size(), 1u);
    for_each_cell(cut.mold.cells.mesh, [&](std::size_t cell) { EXPECT_LE(cut.fed[cell], 0); });
}

TEST(Slots, are_those_below_ten_or_a_quarter_of_their_depth) {
    Floor floor = empty_floor(300, 200, 70);
    add_block(floor, 20, 20, 60, 60, 30);
    add_block(floor, 89, 20, 60, 60, 50);  // 9 mm: below 10
    add_block(floor, 160, 20, 60, 60, 50); // 11 mm between two 50 deep: below 12.5
    add_block(floor, 20, 91, 60, 60, 60);  // 11 mm to one 30 deep: enough
    add_block(floor, 232, 95, 60, 60, 20); // 8 mm from the right wall
    const auto slots = slots_of(floor);
    ASSERT_EQ(slots.size(), 3u);
    EXPECT_EQ(slots[0].first, 0);
    EXPECT_EQ(slots[0].second, 1);
    EXPECT_NEAR(slots[0].width_mm, 9, 1e-9);
    EXPECT_EQ(slots[0].least_mm, 10);
    EXPECT_NEAR(slots[1].width_mm, 11, 1e-9);
    EXPECT_EQ(slots[1].least_mm, 12.5);
    EXPECT_EQ(slots[2].first, 4);
    EXPECT_EQ(slots[2].second, -1);
    EXPECT_NEAR(slots[2].width_mm, 8, 1e-9);
}

TEST(ShutChannels, are_open_boards_ringed_by_blocks_without_a_pour) {
    Floor floor = empty_floor(240, 200, 60);
    for (const auto& [x, y, w, d] :
         {std::array{40.0, 40.0, 160.0, 30.0}, std::array{40.0, 130.0, 160.0, 30.0},
          std::array{40.0, 70.0, 30.0, 60.0}, std::array{170.0, 70.0, 30.0, 60.0}})
        add_block(floor, x, y, w, d, 45);
    const Cut cut(std::move(floor));
    EXPECT_EQ(cut.channels.boards, 2);
    const PourMap bare = pour_map_of(600, {}, 60, cut.mold.cells, cut.channels, cut.fed);
    const auto shut = shut_channels_of(bare, cut.channels);
    ASSERT_EQ(shut.size(), 1u);
    EXPECT_LT(length(shut[0].at - shape::Vec{120, 100}), 60);
    EXPECT_GT(shut[0].ml, 0);
    const PourMap set =
        pour_map_of(600, {{{120, 100}, shut[0].ml}}, 60, cut.mold.cells, cut.channels, cut.fed);
    EXPECT_TRUE(shut_channels_of(set, cut.channels).empty());
}

} // namespace
} // namespace drawercast::air
