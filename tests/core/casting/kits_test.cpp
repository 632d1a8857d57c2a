// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/kits.h"

#include <gtest/gtest.h>

#include <random>
#include <tuple>

namespace drawercast::casting {
namespace {

job::Kit kit(const char* name, double volume_ml, double price, int at_hand = 0) {
    job::Kit out;
    out.name = name;
    out.volume_ml = volume_ml;
    out.price = price;
    out.at_hand = at_hand;
    return out;
}

using Counts = std::vector<KitCount>;

TEST(Kits, table) {
    const auto small = kit("small", 1000, 30);
    const auto large = kit("large", 4000, 90);
    struct Row {
        const char* name;
        double needed_ml;
        std::vector<job::Kit> kits;
        Counts bought, opened;
        double price;
    };
    const Row rows[] = {
        {"one", 900, {small, large}, {{"small", 1}}, {}, 30},
        {"the large one is cheaper than four", 3500, {small, large}, {{"large", 1}}, {}, 90},
        {"equal price: least left over", 2500, {small, large}, {{"small", 3}}, {}, 90},
        {"a mix", 5000, {small, large}, {{"small", 1}, {"large", 1}}, {}, 120},
        {"equal price and volume: fewest",
         4000,
         {kit("quarter", 1000, 20), kit("whole", 4000, 80)},
         {{"whole", 1}},
         {},
         80},
        {"equal in all: listed first", 1000, {kit("b", 1000, 20), kit("a", 1000, 20)}, {{"b", 1}}, {}, 20},
        {"no prices: least left over",
         2300,
         {kit("a", 1000, 0), kit("b", 700, 0)},
         {{"a", 1}, {"b", 2}},
         {},
         0},
        {"shelf first", 3500, {kit("small", 1000, 30, 1), large}, {{"small", 3}}, {{"small", 1}}, 90},
        {"shelf is enough",
         1900,
         {kit("small", 1000, 30, 3), kit("large", 4000, 90, 1)},
         {},
         {{"small", 2}},
         0},
        {"shelf: a whole one rather than too much",
         3900,
         {kit("small", 1000, 30, 3), kit("large", 4000, 90, 1)},
         {},
         {{"large", 1}},
         0},
        {"to the milliliter", 2000, {small}, {{"small", 2}}, {}, 60},
        {"and one over", 2000.5, {small}, {{"small", 3}}, {}, 90},
    };
    for (const Row& row : rows) {
        const Purchase purchase = purchase_of({row.needed_ml / 1.1, row.kits});
        EXPECT_EQ(purchase.kits, row.bought) << row.name;
        EXPECT_EQ(purchase.from_shelf, row.opened) << row.name;
        EXPECT_NEAR(purchase.price, row.price, 1e-9) << row.name;
        EXPECT_NEAR(purchase.needed_ml, row.needed_ml, 1e-9) << row.name;
        EXPECT_GE(purchase.left_over_ml, -1e-9) << row.name;
    }
}

/// Every set there is.
struct Best {
    long price = 0, left = 0, pieces = 0;
    std::vector<int> counts;
    bool found = false;

    void look(const std::vector<job::Kit>& kits, long need, std::vector<int>& counts_now) {
        const std::size_t i = counts_now.size();
        long volume = 0, cost = 0, number = 0;
        for (std::size_t k = 0; k < i; ++k) {
            volume += counts_now[k] * static_cast<long>(kits[k].volume_ml);
            cost += counts_now[k] * static_cast<long>(kits[k].price);
            number += counts_now[k];
        }
        if (i == kits.size()) {
            if (volume >= need) take(cost, volume - need, number, counts_now);
            return;
        }
        const long most = std::max(0L, need - volume) / static_cast<long>(kits[i].volume_ml) + 1;
        for (long n = 0; n <= most; ++n) {
            counts_now.push_back(static_cast<int>(n));
            look(kits, need, counts_now);
            counts_now.pop_back();
        }
    }
    void take(long cost, long over, long number, const std::vector<int>& now) {
        if (found && std::tie(price, left, pieces) < std::tie(cost, over, number)) return;
        if (found && std::tie(price, left, pieces) == std::tie(cost, over, number) && counts > now) return;
        std::tie(price, left, pieces, counts, found) = std::tuple(cost, over, number, now, true);
    }
};

TEST(Kits, is_the_best_of_all_sets) {
    for (unsigned seed = 0; seed < 200; ++seed) {
        std::mt19937 random(seed);
        const auto whole = [&](int low, int high) {
            return std::uniform_int_distribution<int>(low, high)(random);
        };
        std::vector<job::Kit> kits;
        for (int i = 0; i < whole(1, 4); ++i)
            kits.push_back(kit(("k" + std::to_string(i)).c_str(), 50 * whole(5, 40),
                               whole(0, 3) ? 5 * whole(1, 20) : 0));
        const long need = whole(100, 6000);
        Best best;
        std::vector<int> now;
        best.look(kits, need, now);
        Counts expected;
        for (std::size_t i = 0; i < kits.size(); ++i)
            if (best.counts[i] > 0) expected.push_back({kits[i].name, best.counts[i]});
        const Purchase purchase = purchase_of({(static_cast<double>(need) - 0.5) / 1.1, kits});
        EXPECT_EQ(purchase.kits, expected) << "seed " << seed;
        EXPECT_NEAR(purchase.price, static_cast<double>(best.price), 1e-9) << "seed " << seed;
    }
}

TEST(Kits, odd_volumes_are_never_short) {
    for (const double volume : {946.353, 0.4, 333.3}) {
        const Purchase purchase = purchase_of({1000, {kit("odd", volume, 1), kit("liter", 1000, 7)}});
        EXPECT_GE(purchase.left_over_ml, 0) << volume;
    }
}

} // namespace
} // namespace drawercast::casting
