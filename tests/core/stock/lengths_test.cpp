// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/lengths.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace drawercast::stock {
namespace {

void expect_cuts_all(const LengthsIn& in, const LengthsAnswer& answer) {
    std::vector<int> times(in.pieces.size(), 0);
    for (const auto& bar : answer.bars) {
        Micro used = -in.kerf; // none after the last piece
        for (const int piece : bar) {
            ++times[static_cast<std::size_t>(piece)];
            used += in.pieces[static_cast<std::size_t>(piece)] + in.kerf;
        }
        EXPECT_LE(used, in.bar);
    }
    EXPECT_TRUE(std::all_of(times.begin(), times.end(), [](int n) { return n == 1; }));
}

/// Every way to put pieces into bars.
int tried_out(const LengthsIn& in, std::vector<Micro>& room, std::size_t next) {
    if (next == in.pieces.size()) return static_cast<int>(room.size());
    const Micro length = in.pieces[next] + in.kerf;
    int least = static_cast<int>(in.pieces.size());
    for (std::size_t i = 0; i < room.size(); ++i) {
        if (room[i] < length) continue;
        room[i] -= length;
        least = std::min(least, tried_out(in, room, next + 1));
        room[i] += length;
    }
    room.push_back(in.bar + in.kerf - length);
    least = std::min(least, tried_out(in, room, next + 1));
    room.pop_back();
    return least;
}

TEST(Lengths, as_few_bars_as_every_way_tried) {
    std::mt19937 random(3);
    for (int i = 0; i < 120; ++i) {
        LengthsIn in{100, static_cast<Micro>(random() % 4), {}};
        for (unsigned n = 1 + random() % 8; n > 0; --n)
            in.pieces.push_back(10 + static_cast<Micro>(random() % 80));
        const auto answer = fewest_bars(in);
        expect_cuts_all(in, answer);
        std::vector<Micro> room;
        EXPECT_TRUE(answer.proven);
        EXPECT_EQ(static_cast<int>(answer.bars.size()), tried_out(in, room, 0)) << "case " << i;
    }
}

// Bars filled to the last by three pieces each, then mixed: no answer with fewer can be, and longest first
// misses it. Instances in the manner of Falkenauer (1996), A hybrid grouping genetic algorithm for bin
// packing, J. Heuristics 2, 5-30 (triplets).
TEST(Lengths, bars_that_are_known_to_come_out_full) {
    std::mt19937 random(5);
    for (int i = 0; i < 6; ++i) {
        const int bars = 15;
        LengthsIn in{1000, 0, {}};
        for (int n = 0; n < bars; ++n) {
            const Micro first = 380 + static_cast<Micro>(random() % 110);
            const Micro second = 250 + static_cast<Micro>(random() % 60);
            in.pieces.insert(in.pieces.end(), {first, second, 1000 - first - second});
        }
        const auto answer = fewest_bars(in);
        expect_cuts_all(in, answer);
        EXPECT_TRUE(answer.proven) << "case " << i << ", " << answer.steps << " steps";
        EXPECT_EQ(static_cast<int>(answer.bars.size()), bars);
    }
}

TEST(Lengths, the_bound_of_martello_and_toth) {
    // Two thirds do not share a bar, and thirds do by threes.
    EXPECT_EQ(least_bars(100, {67, 67, 67, 34, 34}), 4);
    EXPECT_EQ(least_bars(100, {51, 51, 51}), 3);
    EXPECT_EQ(least_bars(100, {50, 50, 25, 25, 25, 25}), 2);
    EXPECT_EQ(least_bars(100, {}), 0);
}

TEST(Lengths, the_kerf_decides) {
    EXPECT_EQ(fewest_bars({2400'000, 3'200, {1198'400, 1198'400}}).bars.size(), 1U);
    EXPECT_EQ(fewest_bars({2400'000, 3'200, {1198'401, 1198'400}}).bars.size(), 2U);
}

TEST(Lengths, a_search_cut_short_is_not_called_proven) {
    std::mt19937 random(9);
    LengthsIn in{1000, 0, {}};
    for (int n = 0; n < 20; ++n) {
        const Micro first = 380 + static_cast<Micro>(random() % 110);
        const Micro second = 250 + static_cast<Micro>(random() % 60);
        in.pieces.insert(in.pieces.end(), {first, second, 1000 - first - second});
    }
    const auto answer = fewest_bars(in, 1);
    expect_cuts_all(in, answer);
    EXPECT_FALSE(answer.proven);
    EXPECT_EQ(answer.least, 20);
}

} // namespace
} // namespace drawercast::stock
