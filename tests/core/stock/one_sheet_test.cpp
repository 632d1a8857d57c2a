// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/one_sheet.h"
#include "stock/unlimited_table.h"

#include "core/stock/published_sets.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <numeric>
#include <random>
#include <tuple>

namespace drawercast::stock {
namespace {

std::int64_t value_of(const OneSheetIn& in, const std::vector<int>& counts) {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < counts.size(); ++i) sum += counts[i] * in.pieces[i].value;
    return sum;
}

std::int64_t best_unlimited(const OneSheetIn& in) {
    return UnlimitedTable(in).value(in.width + in.kerf, in.height + in.kerf);
}

struct Known {
    const char* set;
    std::int64_t value;
};

class Unlimited : public testing::TestWithParam<Known> {};
TEST_P(Unlimited, gives_the_published_optimum) {
    EXPECT_EQ(best_unlimited(published_set(GetParam().set)), GetParam().value);
}
// Optima: Beasley (1985), table 1 (from memory; recomputed here).
INSTANTIATE_TEST_SUITE_P(Beasley, Unlimited,
                         testing::Values(Known{"gcut1", 56460}, Known{"gcut2", 60536},
                                         Known{"gcut3", 61036}));

class Limited : public testing::TestWithParam<Known> {};
TEST_P(Limited, gives_the_published_optimum_and_proves_it) {
    const auto in = published_set(GetParam().set);
    const auto answer = best_limited(in);
    RecordProperty("patterns", answer.steps);
    EXPECT_TRUE(answer.proven);
    EXPECT_EQ(answer.value, GetParam().value);
}
// Optima: Christofides and Whitlock (1977), proven there and by Viswanathan and Bagchi (1993) (from memory).
INSTANTIATE_TEST_SUITE_P(ChristofidesWhitlock, Limited,
                         testing::Values(Known{"cgcut1", 244}, Known{"cgcut2", 2892}, Known{"cgcut3", 1860}));

/// All cuts of all panels, tried out: slow, but too simple to be wrong.
class EveryCut {
  public:
    explicit EveryCut(const OneSheetIn& in) : in_(in) {}
    std::int64_t best(Micro width, Micro height) {
        if (width <= 0 || height <= 0) return 0;
        const auto known = known_.find({width, height});
        if (known != known_.end()) return known->second;
        std::int64_t most = 0;
        for (const auto& piece : in_.pieces) {
            const bool fits = piece.width <= width && piece.height <= height;
            const bool turned = in_.may_turn && piece.height <= width && piece.width <= height;
            if (fits || turned) most = std::max(most, piece.value);
        }
        for (Micro at = 1; at < width; ++at)
            most = std::max(most, best(at, height) + best(width - at - in_.kerf, height));
        for (Micro at = 1; at < height; ++at)
            most = std::max(most, best(width, at) + best(width, height - at - in_.kerf));
        return known_[{width, height}] = most;
    }

  private:
    const OneSheetIn& in_;
    std::map<std::pair<Micro, Micro>, std::int64_t> known_;
};

OneSheetIn small_set(std::mt19937& random) {
    const auto draw = [&](int from, int to) {
        return from + static_cast<int>(random() % static_cast<unsigned>(to - from + 1));
    };
    OneSheetIn in{draw(8, 22), draw(8, 22), draw(0, 2), draw(0, 1) == 1, {}};
    for (int n = draw(1, 4); n > 0; --n)
        in.pieces.push_back({draw(2, 9), draw(2, 9), draw(1, 40), draw(1, 2)});
    return in;
}

TEST(OneSheet, unlimited_is_as_good_as_every_cut_tried) {
    std::mt19937 random(7);
    for (int i = 0; i < 60; ++i) {
        const auto in = small_set(random);
        EXPECT_EQ(best_unlimited(in), EveryCut(in).best(in.width, in.height)) << "case " << i;
    }
}

/// Every choice of pieces within the limits, each asked of every cut: which one fits, whatever its value.
class EveryChoice {
  public:
    explicit EveryChoice(const OneSheetIn& in) : in_(in) {}
    std::int64_t best() {
        std::vector<int> counts(in_.pieces.size(), 0);
        std::int64_t most = 0;
        do
            if (fits(counts, in_.width, in_.height)) most = std::max(most, value_of(in_, counts));
        while (next(counts));
        return most;
    }

  private:
    bool next(std::vector<int>& counts) const {
        for (std::size_t i = 0; i < counts.size(); ++i) {
            if (++counts[i] <= in_.pieces[i].limit) return true;
            counts[i] = 0;
        }
        return false;
    }

    bool fits(const std::vector<int>& counts, Micro width, Micro height) {
        const auto sum = std::accumulate(counts.begin(), counts.end(), 0);
        if (sum == 0) return true;
        if (width <= 0 || height <= 0) return false;
        const auto key = std::tuple(counts, width, height);
        if (const auto known = known_.find(key); known != known_.end()) return known->second;
        bool any = sum == 1 && single_fits(counts, width, height);
        for (Micro at = 1; at < width && !any; ++at)
            any = splits(counts, at, height, width - at - in_.kerf, height);
        for (Micro at = 1; at < height && !any; ++at)
            any = splits(counts, width, at, width, height - at - in_.kerf);
        return known_[key] = any;
    }

    bool single_fits(const std::vector<int>& counts, Micro width, Micro height) const {
        const auto at = std::find(counts.begin(), counts.end(), 1) - counts.begin();
        const auto& piece = in_.pieces[static_cast<std::size_t>(at)];
        return (piece.width <= width && piece.height <= height) ||
               (in_.may_turn && piece.height <= width && piece.width <= height);
    }

    bool splits(const std::vector<int>& counts, Micro w1, Micro h1, Micro w2, Micro h2) {
        std::vector<int> first(counts.size(), 0);
        const auto step = [&] {
            for (std::size_t i = 0; i < first.size(); ++i) {
                if (++first[i] <= counts[i]) return true;
                first[i] = 0;
            }
            return false;
        };
        do {
            std::vector<int> second(counts);
            for (std::size_t i = 0; i < counts.size(); ++i) second[i] -= first[i];
            if (fits(first, w1, h1) && fits(second, w2, h2)) return true;
        } while (step());
        return false;
    }

    const OneSheetIn& in_;
    std::map<std::tuple<std::vector<int>, Micro, Micro>, bool> known_;
};

TEST(OneSheet, limited_is_as_good_as_every_choice_and_cut_tried) {
    std::mt19937 random(11);
    for (int i = 0; i < 25; ++i) {
        auto in = small_set(random);
        in.width = std::min<Micro>(in.width, 11), in.height = std::min<Micro>(in.height, 9);
        if (in.pieces.size() > 3) in.pieces.pop_back();
        const auto answer = best_limited(in);
        ASSERT_TRUE(answer.proven);
        EXPECT_EQ(answer.value, EveryChoice(in).best()) << "case " << i;
    }
}

TEST(OneSheet, a_search_cut_short_says_so) {
    const auto answer = best_limited(published_set("cgcut2"), 50);
    EXPECT_FALSE(answer.proven);
    EXPECT_GT(answer.value, 0);
}

TEST(OneSheet, the_kerf_counts_between_pieces_but_not_at_the_edge) {
    OneSheetIn in{203, 100, 3, false, {{100, 100, 1, 2}}};
    EXPECT_EQ(best_limited(in).value, 2);
    EXPECT_EQ(best_unlimited(in), 2);
    in.width = 202;
    EXPECT_EQ(best_limited(in).value, 1);
    EXPECT_EQ(best_unlimited(in), 1);
}

} // namespace
} // namespace drawercast::stock
