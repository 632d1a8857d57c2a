// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/sheets.h"

#include "core/stock/sawn.h"

#include <algorithm>
#include <random>

namespace drawercast::stock {
namespace {

void expect_saws_all(const SheetsIn& in, const SheetsAnswer& answer) {
    std::vector<int> times(in.pieces.size(), 0);
    for (const auto& sheet : answer.sheets) {
        EXPECT_EQ(sheet.nodes[0].width, in.width);
        const auto out = sawn(sheet, in.kerf, in.pieces);
        for (std::size_t i = 0; i < out.size(); ++i) times[i] += out[i];
    }
    EXPECT_TRUE(std::all_of(times.begin(), times.end(), [](int n) { return n == 1; }));
    EXPECT_GE(static_cast<int>(answer.sheets.size()), answer.least);
}

SheetsIn mixed_parts(std::mt19937& random, std::size_t count) {
    SheetsIn in{2440'000, 1220'000, 3'200, {}};
    for (std::size_t i = 0; i < count; ++i)
        in.pieces.push_back({60'000 + static_cast<Micro>(random() % 500'000),
                             40'000 + static_cast<Micro>(random() % 400'000), random() % 4 != 0});
    return in;
}

TEST(Sheets, every_piece_comes_out_once_by_cuts_from_edge_to_edge) {
    std::mt19937 random(1);
    for (const std::size_t count : {1U, 2U, 7U, 30U, 80U}) {
        const auto in = mixed_parts(random, count);
        const auto answer = few_sheets(in, 40);
        expect_saws_all(in, answer);
        EXPECT_LE(static_cast<int>(answer.sheets.size()), answer.least + 1) << count << " pieces";
    }
}

TEST(Sheets, the_same_job_is_cut_the_same_way) {
    std::mt19937 random(2);
    const auto in = mixed_parts(random, 25);
    const auto once = few_sheets(in), again = few_sheets(in);
    ASSERT_EQ(once.sheets.size(), again.sheets.size());
    for (std::size_t i = 0; i < once.sheets.size(); ++i)
        EXPECT_EQ(layout_of(once.sheets[i], in.kerf).cuts.size(),
                  layout_of(again.sheets[i], in.kerf).cuts.size());
}

TEST(Sheets, quarters_of_a_sheet_come_out_of_one) {
    SheetsIn in{2440'000, 1220'000, 3'200, {}};
    for (int i = 0; i < 4; ++i) in.pieces.push_back({(2440'000 - 3'200) / 2, (1220'000 - 3'200) / 2, true});
    const auto answer = few_sheets(in);
    expect_saws_all(in, answer);
    EXPECT_EQ(answer.sheets.size(), 1U);
    EXPECT_TRUE(answer.proven);
    in.pieces[0].width += 1000; // a millimeter more, and it does not
    const auto more = few_sheets(in);
    EXPECT_EQ(more.sheets.size(), 2U);
}

TEST(Sheets, a_search_proves_what_the_area_cannot) {
    // Two long parts and one square: 0.79 of the sheet by area, yet no way to lay them.
    const SheetsIn in{1000'000,
                      1000'000,
                      0,
                      {{900'000, 300'000, true}, {900'000, 300'000, true}, {550'000, 500'000, true}}};
    EXPECT_EQ(least_sheets(in), 2);
    EXPECT_TRUE(few_sheets(in).proven);
}

TEST(Sheets, pieces_over_half_each_way_have_a_sheet_each) {
    const SheetsIn in{1000'000, 1000'000, 0, std::vector<SheetPiece>(3, {501'000, 501'000, true})};
    EXPECT_EQ(least_sheets(in), 3);
}

TEST(Sheets, cuts_come_in_an_order_one_can_saw) {
    std::mt19937 random(4);
    const auto in = mixed_parts(random, 20);
    const auto answer = few_sheets(in, 20);
    for (const auto& sheet : answer.sheets) {
        const auto drawn = layout_of(sheet, in.kerf);
        ASSERT_FALSE(drawn.cuts.empty());
        EXPECT_EQ(drawn.cuts.front().depth, 1);
        for (const auto& cut : drawn.cuts) EXPECT_TRUE(cut.x0 == cut.x1 || cut.y0 == cut.y1);
        for (const auto& piece : drawn.pieces) {
            EXPECT_GE(piece.x, 0);
            EXPECT_LE(piece.x + piece.width, in.width);
            EXPECT_LE(piece.y + piece.height, in.height);
        }
    }
}

} // namespace
} // namespace drawercast::stock
