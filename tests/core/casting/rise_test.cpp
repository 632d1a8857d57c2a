// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/push.h"
#include "casting/rise.h"
#include "casting/times.h"

#include <gtest/gtest.h>

namespace drawercast::casting {
namespace {

std::vector<RiseCurve> all_curves() {
    return {Smoothstep{50, 180, 6}, FirstOrder{50, 180, 6}, CupRise{{50, 90, 180}, 6},
            CupRise{{40, 150, 170}, 10}};
}

TEST(RiseCurves, rise_from_liquid_to_full_and_never_fall) {
    for (const RiseCurve& curve : all_curves()) {
        EXPECT_DOUBLE_EQ(expansion_after(curve, 0), 1);
        EXPECT_DOUBLE_EQ(expansion_after(curve, 40), 1);
        EXPECT_DOUBLE_EQ(expansion_after(curve, 500), full_expansion(curve));
        double last = 1;
        for (double t = 0; t < 200; t += 0.25) {
            const double now = expansion_after(curve, t);
            EXPECT_GE(now, last - 1e-12);
            last = now;
        }
    }
}

TEST(RiseCurves, time_and_expansion_are_inverse) {
    for (const RiseCurve& curve : all_curves())
        for (double share = 0.02; share < 0.985; share += 0.06) {
            const double wanted = 1 + share * (full_expansion(curve) - 1);
            EXPECT_NEAR(expansion_after(curve, time_of(curve, wanted)), wanted, 1e-9);
        }
}

TEST(RiseCurves, asking_for_more_than_there_is_gives_full_rise) {
    EXPECT_DOUBLE_EQ(time_of(Smoothstep{50, 180, 6}, 7), 180);
    EXPECT_DOUBLE_EQ(time_of(FirstOrder{50, 180, 6}, 6), 180);
    EXPECT_DOUBLE_EQ(time_of(CupRise{{50, 90, 180}, 6}, 6), 180);
}

TEST(RiseCurves, cup_goes_through_its_three_points) {
    const RiseCurve curve = CupRise{{40, 100, 170}, 9};
    EXPECT_DOUBLE_EQ(expansion_after(curve, 40), 1);
    EXPECT_NEAR(expansion_after(curve, 100), 5, 1e-12);
    EXPECT_NEAR(time_of(curve, 5), 100, 1e-9);
    EXPECT_DOUBLE_EQ(expansion_after(curve, 170), 9);
    // by hand for an even cup: straight on, since all three points lie on a line
    const RiseCurve even = CupRise{{40, 100, 160}, 9};
    EXPECT_NEAR(expansion_after(even, 70), 3, 1e-12);
    EXPECT_NEAR(expansion_after(even, 130), 7, 1e-12);
}

TEST(RiseCurves, the_label_gives_two_guesses_and_a_cup_one) {
    Profile profile;
    profile.pot_life_s = 50;
    profile.rise_s = 180;
    EXPECT_EQ(rise_curves(profile, 6).size(), 2u);
    profile.cup = CupTimes{40, 90, 170};
    ASSERT_EQ(rise_curves(profile, 6).size(), 1u);
    EXPECT_EQ(rise_curves(profile, 6)[0], RiseCurve(CupRise{{40, 90, 170}, 6}));
}

TEST(Times, the_quicker_guess_counts_and_touch_never_follows_contact) {
    Profile profile;
    profile.expansion = 6;
    profile.mix_s = 20;
    profile.pot_life_s = 50;
    profile.rise_s = 180;
    const Times times = times_of({profile, 1500, 12, 7.8e6, 60, 13});
    EXPECT_DOUBLE_EQ(times.contact_s, time_of(FirstOrder{50, 180, 6}, 5.2));
    EXPECT_DOUBLE_EQ(times.touch_s, time_of(FirstOrder{50, 180, 6}, 60.0 / 13));
    EXPECT_DOUBLE_EQ(times.pour_margin_s, 18);
    const Times late = times_of({profile, 1500, 12, 7.8e6, 60, 11}); // clay takes some of the floor
    EXPECT_DOUBLE_EQ(late.touch_s, late.contact_s);
}

TEST(Times, shut_in_air_fills_the_mold_sooner_and_pushes_from_then_on) {
    Profile profile;
    profile.ambient_kpa = 101.325;
    profile.expansion = 6;
    profile.mix_s = 20;
    profile.pot_life_s = 50;
    profile.rise_s = 180;
    const Times vented = times_of({profile, 1500, 12, 7.8e6, 60, 13});
    const Times shut = times_of({profile, 1500, 12, 7.8e6, 60, 13, 600});
    EXPECT_DOUBLE_EQ(shut.contact_s, time_of(FirstOrder{50, 180, 6}, (7800.0 - 600) / 1500));
    EXPECT_LT(shut.contact_s, vented.contact_s);
    GasIn gas{101.325, 6, 1500, 7.8e6, 296.15, 10, 600};
    const PushIn push{gas, FirstOrder{50, 180, 6}};
    EXPECT_EQ(push_kpa(push, shut.contact_s - 0.1), 0);
    EXPECT_NEAR(push_kpa(push, shut.contact_s + 1e-6), 0, 1e-3) << "no jump";
    EXPECT_NEAR(push_kpa(push, 1000), gas_kpa(gas), 1e-9);
    gas.expansion = full_mold(gas), gas.hotter_k = 0;
    EXPECT_NEAR(gas_kpa(gas), 0, 1e-9);
}

} // namespace
} // namespace drawercast::casting
