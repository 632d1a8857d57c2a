// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/answer.h"
#include "air/squeeze.h"
#include "casting/profile.h"
#include "casting/push.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace drawercast::air {
namespace {

SqueezeIn mold() {
    SqueezeIn in;
    in.mold.profile = *casting::profile_of({});
    in.mold.net_mm3 = 9.0e6;
    in.overpack = 0.15;
    in.mold.poured_ml = 1.15 * 9000 / in.mold.profile.expansion;
    in.mold.insert_area_mm2 = 480 * 360;
    in.mold.hotter_k = 10;
    in.plate_mm = 16;
    in.viscosity_pa_s = 200;
    return in;
}

TEST(Squeeze, follows_poiseuille_with_losses_at_both_ends) {
    const std::vector<Vent> two{{{}, 3, VentFor::air}, {{}, 4, VentFor::air}};
    const auto one = [](double d) { // as a flow through L + 3πd/16 under 1 kPa for 100 s, Pa and m
        const double length = (16 + 3 * std::numbers::pi * d / 16) / 1000;
        const double m3_s = std::numbers::pi * std::pow(d / 1000, 4) * 1000 / (128 * 200 * length);
        return m3_s * 100 * 1e9;
    };
    EXPECT_NEAR(squeezed_out_mm3(two, 100, 200, 16), one(3) + one(4), 1e-9);
}

TEST(Squeeze, impulse_lies_between_pressure_times_the_shortest_and_the_longest_time) {
    const SqueezeIn in = mold();
    const Impulse impulse = impulse_of(in.mold);
    const double closed = casting::gas_kpa(casting::gas_of(in.mold));
    EXPECT_GT(impulse.filling_kpa_s, 0);
    EXPECT_LT(impulse.filling_kpa_s, closed * in.mold.profile.rise_s);
    EXPECT_GT(impulse.leaving_kpa_s, impulse.filling_kpa_s + closed * flows_after_rise_s - 1e-9);
}

TEST(Squeeze, takes_pressure_off_and_thinner_foam_takes_more) {
    const SqueezeIn in = mold();
    const double closed = casting::gas_kpa(casting::gas_of(in.mold));
    const std::vector<Vent> vents(12, {{}, 4, VentFor::air});
    const Squeeze squeeze = squeeze_of(in, vents);
    EXPECT_NEAR(squeeze.limit_ml, 0.1 * 0.15 * 9000, 1e-9);
    EXPECT_LT(squeeze.held_thin_kpa, squeeze.held_kpa);
    EXPECT_LT(squeeze.held_kpa, squeeze.held_thick_kpa);
    EXPECT_LT(squeeze.held_thick_kpa, closed);
    const double again = in.mold.poured_ml * (1 - squeeze.out_ml * 1000 / in.mold.net_mm3);
    casting::GasIn gas = casting::gas_of(in.mold);
    gas.poured_ml = again;
    EXPECT_NEAR(squeeze.held_kpa, casting::gas_kpa(gas), 1e-9);
}

TEST(Squeeze, many_wide_vents_are_unsure_and_few_narrow_ones_are_not) {
    EXPECT_FALSE(squeeze_of(mold(), std::vector<Vent>(2, {{}, 2, VentFor::air})).unsure);
    EXPECT_TRUE(squeeze_of(mold(), std::vector<Vent>(40, {{}, 8, VentFor::air})).unsure);
}

TEST(Squeeze, choices_grow_with_drill_and_count) {
    const auto choices = drill_choices(mold(), {4, 2, 3}, 5);
    ASSERT_EQ(choices.size(), 15u);
    EXPECT_EQ(choices.front().drill_mm, 2);
    for (std::size_t i = 0; i + 5 < choices.size(); ++i) {
        if (choices[i].count < 5) {
            EXPECT_LT(choices[i].squeeze.out_ml, choices[i + 1].squeeze.out_ml);
        }
        EXPECT_LT(choices[i].squeeze.out_ml, choices[i + 5].squeeze.out_ml);
    }
}

} // namespace
} // namespace drawercast::air
