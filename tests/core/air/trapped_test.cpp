// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/floors.h"

#include <gtest/gtest.h>

namespace drawercast::air {
namespace {

Floor two_blocks() {
    Floor floor = empty_floor(240, 160, 60);
    add_block(floor, 20, 25, 90, 100, 45);
    add_block(floor, 135, 60, 80, 50, 50);
    return floor;
}

TEST(Trapped, without_vents_is_all_the_room_over_the_blocks) {
    Worked mold(two_blocks(), 4, 5);
    const auto& pockets = mold.follow();
    ASSERT_EQ(pockets.size(), 2u);
    const Trapped trapped = trapped_by(air_tree_of(mold.history), pockets, {});
    // At first touch the channels are just full and the blocks dry.
    EXPECT_NEAR(trapped.air_ml, (9000 * 15 + 4000 * 10) / 1000.0, 0.5);
    EXPECT_NEAR(trapped.shares_ml[0] + trapped.shares_ml[1], trapped.air_ml, 1e-9);
}

TEST(Trapped, vents_at_the_pockets_leave_next_to_nothing) {
    Worked mold(two_blocks(), 4, 5);
    const auto& pockets = mold.follow();
    const Trapped trapped =
        trapped_by(air_tree_of(mold.history), pockets, {pockets[0].cell, pockets[1].cell});
    EXPECT_LT(trapped.air_ml, 2);
}

TEST(Trapped, a_vent_over_one_block_does_nothing_for_the_other) {
    Worked mold(two_blocks(), 4, 5);
    const auto& pockets = mold.follow();
    const std::size_t large = pockets[0].air_ml > pockets[1].air_ml ? 0 : 1;
    const Trapped trapped = trapped_by(air_tree_of(mold.history), pockets, {pockets[large].cell});
    EXPECT_NEAR(trapped.shares_ml[1 - large], 40, 0.5);
    EXPECT_LT(trapped.shares_ml[large], 1);
}

TEST(Trapped, a_vent_in_a_channel_is_foamed_over_at_once) {
    Worked mold(two_blocks(), 4, 5);
    const auto& pockets = mold.follow();
    const Trapped none = trapped_by(air_tree_of(mold.history), pockets, {});
    const Trapped edge = trapped_by(air_tree_of(mold.history), pockets, {mold.cells.mesh.holding({10, 10})});
    EXPECT_EQ(edge.air_ml, none.air_ml);
}

TEST(Trapped, an_early_vent_leaves_what_is_dry_when_it_is_foamed_over) {
    Worked mold(two_blocks(), 4, 5);
    const auto& pockets = mold.follow();
    const std::size_t off = mold.cells.mesh.holding({30, 75}); // not far in
    ASSERT_TRUE(mold.history.refine_at({off}, never_stop));
    const Trapped trapped = trapped_by(air_tree_of(mold.history), pockets, {off});
    EXPECT_GT(trapped.air_ml, 50);
    EXPECT_LT(trapped.air_ml, 40 + 100);
}

TEST(Trapped, of_one_pocket_alone_is_its_share_of_all_wherever_a_vent_is_tried) {
    Worked mold(two_blocks(), 4, 5);
    const auto& pockets = mold.follow();
    ASSERT_EQ(pockets.size(), 2u);
    const AirTree tree = air_tree_of(mold.history);
    int shut = 0, served = 0;
    for (const std::vector<std::size_t>& others :
         {std::vector<std::size_t>{}, {mold.cells.mesh.holding({30, 75})}, {pockets[0].cell}})
        for (std::size_t pocket = 0; pocket < pockets.size(); ++pocket) {
            const StaysIn stays_in(tree, pockets, pocket, others);
            for (double y = 5; y < 160; y += 10)
                for (double x = 5; x < 240; x += 10) {
                    std::vector<std::size_t> vents = others;
                    vents.push_back(mold.cells.mesh.holding({x, y}));
                    const double all = trapped_by(tree, pockets, vents).shares_ml[pocket];
                    ASSERT_EQ(stays_in.with(vents.back()), all) << x << ", " << y;
                    ++(all > 1 ? shut : served);
                }
        }
    EXPECT_GT(shut, 100);
    EXPECT_GT(served, 100);
}

TEST(AirPockets, that_part_from_each_other_count_apart) {
    Floor floor = empty_floor(240, 100, 60);
    // A dumbbell: two wide ends and a narrow waist.
    add_block(floor, 15, 15, 70, 70, 48);
    add_block(floor, 85, 42, 70, 16, 48);
    add_block(floor, 155, 15, 70, 70, 48);
    Worked mold(std::move(floor), 4, 5);
    const auto& pockets = mold.follow();
    ASSERT_EQ(pockets.size(), 2u);
    EXPECT_NEAR(pockets[0].at.x + pockets[1].at.x, 240, 1);
    EXPECT_NEAR(pockets[0].expansion, pockets[1].expansion, 0.011);
    EXPECT_NEAR(pockets[0].air_ml, pockets[1].air_ml, 0.02 * pockets[0].air_ml);
}

TEST(AirPockets, of_a_job_stopped_halfway_are_none) {
    Worked mold(two_blocks(), 4, 5);
    EXPECT_FALSE(mold.history.follow([](double done) { return done > 0.3; }));
}

} // namespace
} // namespace drawercast::air
