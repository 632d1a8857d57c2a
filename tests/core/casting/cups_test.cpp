// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/cups.h"
#include "casting/profile.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace drawercast::casting {
namespace {

/// A cup in use whose foam rose so many times, its liquid 1.11 g/mL.
job::Cup cup_of(double expansion) {
    job::Cup cup;
    cup.use = true;
    cup.liquid_g =
        1.11 / expansion * std::numbers::pi / 4 * cup.diameter_mm * cup.diameter_mm * cup.risen_mm / 1000;
    return cup;
}

TEST(Cups, one_cup_is_its_own_mean) {
    const auto mean = mean_of_cups({cup_of(6.2)}, 1.11);
    ASSERT_TRUE(mean);
    EXPECT_EQ(mean->expansion, *cup_expansion(cup_of(6.2), 1.11));
    EXPECT_NEAR(mean->expansion, 6.2, 1e-12);
    EXPECT_EQ(mean->spread, 0);
    EXPECT_EQ(mean->deviation, 0);
}

TEST(Cups, several_give_mean_and_spread) {
    const auto mean = mean_of_cups({cup_of(5.8), cup_of(6.0), cup_of(6.5)}, 1.11);
    ASSERT_TRUE(mean);
    EXPECT_NEAR(mean->expansion, 6.1, 1e-12);
    EXPECT_NEAR(mean->spread, 0.35 / 6.1, 1e-12);
    EXPECT_NEAR(mean->deviation, std::sqrt((0.09 + 0.01 + 0.16) / 2), 1e-12);
}

TEST(Cups, what_is_reckoned_with_is_never_less_than_they_lie_apart) {
    job::Foam foam;
    foam.cup = cup_of(6);
    const auto one = profile_of({foam, 23, 0});
    foam.cups = {cup_of(6)};
    const auto two = profile_of({foam, 23, 0});
    ASSERT_TRUE(one && two);
    EXPECT_DOUBLE_EQ(one->uncertainty, cup_uncertainty);
    EXPECT_NEAR(two->expansion, one->expansion, 1e-12);
    EXPECT_DOUBLE_EQ(two->uncertainty, cup_uncertainty);
    foam.cups = {cup_of(7)};
    EXPECT_NEAR(profile_of({foam, 23, 0})->uncertainty, 0.5 / 6.5, 1e-9);
    foam.cups[0].use = false;
    EXPECT_EQ(*profile_of({foam, 23, 0}), *one);
}

TEST(Cups, one_that_did_not_rise_is_refused) {
    job::Cup flat = cup_of(6);
    flat.liquid_g *= 10;
    EXPECT_FALSE(mean_of_cups({cup_of(6), flat}, 1.11));
}

} // namespace
} // namespace drawercast::casting
