// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/buy.h"
#include "stock/cut_list.h"
#include "stock/supplies.h"
#include "stock/tickets.h"

#include "core/stock/stock_scene.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <set>

namespace drawercast::stock {
namespace {

using testing::ElementsAre;

Part part(const std::string& label, double length, double width, const std::string& board = "b16") {
    return {label, "d1", 0, Role::wall, board, length, width, 15.8, Finish::rectangle};
}

CutListIn list_in(std::vector<Part> parts) {
    CutListIn in;
    in.parts = std::move(parts);
    in.boards = {board("b16", 15.8), board("b12", 12.1)};
    in.boards[0].price = 30;
    return in;
}

TEST(CutList, each_part_lies_on_a_sheet_of_its_board_once) {
    CutListIn in = list_in({part("a", 1200, 600), part("b", 1200, 500), part("c", 400, 300, "b12")});
    const CutList list = cut_list_of(in);
    ASSERT_EQ(list.boards.size(), 2U);
    EXPECT_EQ(list.boards[0].board.name, "b16");
    ASSERT_EQ(list.boards[0].sheets.size(), 1U);
    std::multiset<int> seen;
    for (const auto& piece : list.boards[0].sheets[0].pieces) seen.insert(piece.piece);
    EXPECT_THAT(seen, ElementsAre(0, 1));
    EXPECT_EQ(list.boards[0].to_buy, 1);
    EXPECT_DOUBLE_EQ(list.boards[0].price, 30);
    in.boards[0].at_hand = 3;
    EXPECT_EQ(cut_list_of(in).boards[0].to_buy, 0);
    EXPECT_DOUBLE_EQ(cut_list_of(in).boards[0].price, 0);
}

TEST(CutList, drawers_share_their_sheets) {
    std::vector<Part> parts;
    for (const char* drawer : {"d1", "d2", "d3", "d4"}) {
        parts.push_back(part(std::string(drawer) + " plate", 500, 390));
        parts.back().drawer = drawer;
    }
    const CutList list = cut_list_of(list_in(parts));
    ASSERT_EQ(list.boards.size(), 1U);
    EXPECT_EQ(list.boards[0].sheets.size(), 1U);
    EXPECT_EQ(list.boards[0].sheets[0].pieces.size(), 4U);
}

TEST(CutList, a_part_larger_than_any_sheet_is_told) {
    const CutList list = cut_list_of(list_in({part("a", 2435, 100), part("b", 2430, 100)}));
    EXPECT_THAT(list.boards[0].too_large, ElementsAre(0)); // 2440 less 5 mm off either end
    EXPECT_EQ(list.boards[0].sheets.size(), 1U);
}

TEST(CutList, short_parts_share_a_strip) {
    const CutListIn in =
        list_in({part("a", 50, 30), part("b", 50, 20), part("c", 60, 30), part("d", 40, 30)});
    const CutList list = cut_list_of(in);
    const auto& pieces = list.boards[0].pieces;
    ASSERT_EQ(pieces.size(), 3U);
    EXPECT_FALSE(pieces[0].strip); // 60 mm can be held
    EXPECT_THAT(pieces[1].parts, ElementsAre(0, 1));
    EXPECT_DOUBLE_EQ(pieces[1].width_mm, 50);
    EXPECT_DOUBLE_EQ(pieces[1].length_mm, 300); // 30 + 3.2 + 20, but no shorter than hands hold
    EXPECT_THAT(pieces[2].parts, ElementsAre(3));
}

TEST(CutList, bars_and_half_tubes) {
    CutListIn in;
    job::Stiffener beam;
    beam.name = "45x45", beam.length_mm = 2400, beam.price = 5;
    in.stiffeners = {beam};
    in.tubes = usual_tubes();
    for (int i = 0; i < 5; ++i)
        in.lengths.push_back({"s" + std::to_string(i), "d1", 0, Role::stiffener, "45x45", 1000});
    for (int i = 0; i < 3; ++i)
        in.lengths.push_back({"t" + std::to_string(i), "d1", 1, Role::half_tube, "Pipe 75", 120});
    const CutList list = cut_list_of(in);
    ASSERT_EQ(list.bars.size(), 2U);
    EXPECT_EQ(list.bars[0].bars.size(), 3U); // two from each
    EXPECT_DOUBLE_EQ(list.bars[0].price, 15);
    EXPECT_TRUE(list.bars[0].proven);
    ASSERT_EQ(list.bars[1].bars.size(), 1U);
    EXPECT_EQ(list.bars[1].bars[0].size(), 3U) << "two halves of one length would each lack half a kerf";
}

TEST(Tickets, one_fence_setting_serves_all_parts_of_that_width) {
    const CutListIn in = list_in({part("wall 1", 500, 60), part("wall 2", 360, 60), part("base", 500, 390),
                                  part("wall 3", 500, 60), part("7a.1", 40, 30), part("7a.2", 40, 30)});
    const auto tickets = tickets_of(cut_list_of(in), in.parts);
    ASSERT_EQ(tickets.size(), 3U);
    EXPECT_DOUBLE_EQ(tickets[0].fence_mm, 390);
    EXPECT_DOUBLE_EQ(tickets[1].fence_mm, 60);
    EXPECT_DOUBLE_EQ(tickets[1].run_mm, 1360);
    ASSERT_EQ(tickets[1].lines.size(), 2U);
    EXPECT_THAT(tickets[1].lines[0].labels, ElementsAre("wall 1", "wall 3"));
    EXPECT_TRUE(tickets[2].lines[0].from_strip);
    EXPECT_DOUBLE_EQ(tickets[2].fence_mm, 40);
    EXPECT_DOUBLE_EQ(tickets[2].lines[0].length_mm, 30);
}

TEST(BuyList, is_what_is_needed_less_what_is_at_hand) {
    CutListIn in = list_in({part("a", 1200, 600)});
    const CutList cuts = cut_list_of(in);
    job::Closure closure;
    closure.name = "4 × 50", closure.price = 0.05, closure.at_hand = 20;
    const auto list = buy_list_of({cuts, {{4, 40, 21}}, {}, {{closure, 38}}, {}, {}, false});
    ASSERT_EQ(list.size(), 3U);
    EXPECT_EQ(list[0].buy, 1);
    EXPECT_EQ(list[1], (BuyLine{Goods::screw, "4 × 40", 24, 0, 24, 0})); // 23.1 with a tenth spare
    EXPECT_EQ(list[2].needed, 42);
    EXPECT_EQ(list[2].buy, 22);
    EXPECT_NEAR(price_of(list), 30 + 22 * 0.05, 1e-9);
}

TEST(BuyList, joints_take_the_screws_the_shop_knows) {
    CutListIn in = list_in({});
    job::Closure closure, other;
    closure.name = "Screw 4 × 50", closure.price = 0.05, closure.at_hand = 20;
    other.name = "Screw 4 × 40", other.length_mm = 40, other.price = 0.04;
    const auto list = buy_list_of({cut_list_of(in),
                                   {{4, 50, 10}, {4, 40, 10}, {4, 30, 10}},
                                   {},
                                   {{closure, 30}},
                                   {},
                                   {closure, other}});
    ASSERT_EQ(list.size(), 3U);
    EXPECT_EQ(list[0].name, "4 × 30");
    EXPECT_EQ(list[1].needed, 44); // of plate and joints together, a tenth to spare
    EXPECT_EQ(list[1].buy, 24);
    EXPECT_EQ(list[2], (BuyLine{Goods::closure, "Screw 4 × 40", 11, 0, 11, 11 * 0.04}));
}

TEST(BuyList, what_no_list_prices_is_said_to_have_none) {
    CutListIn in = list_in({});
    const std::vector<ScrewUse> screws{{4, 25, 10}, {3, 30, 10}}, pins{{2, 24, 6}, {2, 31, 4}};
    const auto usual = buy_list_of({cut_list_of(in), screws, pins, {}, {}, {}, true});
    ASSERT_EQ(usual.size(), 3U);
    EXPECT_EQ(usual[2].goods, Goods::pin);
    EXPECT_EQ(usual[2].name, "2 × 35"); // nipped off
    EXPECT_EQ(usual[2].needed, 11);
    EXPECT_EQ(unpriced(usual), 0);
    EXPECT_NEAR(usual[0].price, 11 * 0.03, 1e-9); // 2.5 cents are three
    EXPECT_NEAR(usual[1].price, 11 * 0.02, 1e-9);
    const auto own = buy_list_of({cut_list_of(in), screws, pins, {}, {}, {}, false});
    EXPECT_EQ(unpriced(own), 3);
    EXPECT_EQ(price_of(own), 0);
}

TEST(Tubes, all_usual_ones_have_a_price) {
    for (const auto& tube : usual_tubes()) EXPECT_GT(tube.price, 0) << tube.name;
}

TEST(Supplies, are_bought_by_whole_packages_less_what_is_at_hand) {
    SuppliesIn in;
    in.sealed_mm2 = 5e6; // 3 coats at 10 m²/L: 1.5 L
    in.clay_mm3 = 90'000, in.batches = 2, in.pours = 1;
    auto lines = supplies_of(in);
    add_packages(lines, {{job::Supply::sealer, 0.75, 14, 0.2, {}}, {job::Supply::cups, 10, 3, 100, {}}});
    const auto line = [&](Supply supply) {
        return *std::find_if(lines.begin(), lines.end(),
                             [&](const auto& one) { return one.supply == supply; });
    };
    EXPECT_EQ(line(Supply::sealer).packages, (Packages{0.75, 0.2, 2, 2, 28})); // 1.3 L more
    EXPECT_EQ(line(Supply::cups).packages, (Packages{10, 6, 1, 0, 0}));
    EXPECT_FALSE(line(Supply::clay_volume).packages.has_value());
    EXPECT_DOUBLE_EQ(price_of(lines), 28);
    EXPECT_EQ(packages_for(1.5, 0.75), 2);
    EXPECT_EQ(packages_for(0.1 + 0.2, 0.1), 3); // what rounds up is no package more
}

} // namespace
} // namespace drawercast::stock
