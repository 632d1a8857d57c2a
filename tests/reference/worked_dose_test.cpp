// SPDX-License-Identifier: GPL-3.0-or-later
// One invented drawer worked through by hand (python 3.11, double precision): insert 480 × 360 × 60, six
// blocks, fillet 5, expansion 6, liquid 1.10 g/mL, no shrinkage, sea level. Here from its net cavity on;
// worked_cavity_test.cpp gets there.
#include "casting/band.h"
#include "casting/dose.h"
#include "casting/pressure.h"
#include "casting/push.h"
#include "casting/times.h"

#include <gtest/gtest.h>

namespace drawercast::casting {
namespace {

constexpr double net_mm3 = 9042094.172;
constexpr double area_mm2 = 480 * 360;
constexpr double open_mm2 = 128715.93; // beside the blocks

job::Foam foam(bool with_cup = false) {
    job::Foam out;
    out.expansion = 6;
    out.overpack = 0.15;
    out.density_a_g_ml = 1.20;
    out.density_b_g_ml = 1.00;
    if (!with_cup) return out;
    out.cup = job::Cup{};
    out.cup->use = true;
    out.cup->liquid_g = 1.1 / 6 * (3.14159265358979324 * 80 * 80 * 100) / 4000; // rises to 6 times
    return out;
}

DoseIn dose_in(const job::Foam& f, double altitude_m = 0) {
    job::Shop shop;
    shop.altitude_m = altitude_m;
    return {*profile_of({f, 23, altitude_m}), f, shop, net_mm3, area_mm2};
}

PressureIn pressure_in(const DoseIn& in, double hotter_k) {
    PressureIn out;
    out.mold = {in.profile, dose_of(in)->poured_ml, net_mm3, area_mm2, hotter_k, 0};
    out.band = band_of(out.mold);
    return out;
}

TEST(WorkedDose, foam) {
    const Dose dose = *dose_of(dose_in(foam()));
    EXPECT_NEAR(dose.poured_ml, 1733.07, 5e-3);
    EXPECT_NEAR(dose.poured_ml / 2, 866.534, 5e-4);
    EXPECT_NEAR(dose.free_rise_kg_m3, 183.333, 5e-4);
    EXPECT_NEAR(dose.molded_kg_m3, 210.833, 5e-4);
    EXPECT_NEAR(dose.insert_g, 1906.37, 5e-3);
    EXPECT_NEAR(dose.insert_g / 1.15, 1657.72, 5e-3); // at free rise
    EXPECT_NEAR(dose.poured_ml / 1.15, 1507.02, 5e-3);
    EXPECT_EQ(dose.batches, 1);
    // 1.20 and 1.02: denser, as many milliliters
    job::Foam denser = foam();
    denser.density_b_g_ml = 1.02;
    const Dose other = *dose_of(dose_in(denser));
    EXPECT_NEAR(other.free_rise_kg_m3, 185.000, 5e-4);
    EXPECT_NEAR(other.insert_g, 1923.71, 5e-3);
    EXPECT_DOUBLE_EQ(other.poured_ml, dose.poured_ml);
}

TEST(WorkedDose, mixed_liquid_covers_reserve_and_bucket) {
    const Dose dose = *dose_of(dose_in(foam()));
    const double with_reserve = dose.poured_ml * 1.015;
    EXPECT_NEAR(dose.bucket_left_ml, 0.04 * with_reserve, 1e-9);
    EXPECT_NEAR(dose.mixed_ml, 1.04 * with_reserve, 1e-9);
    EXPECT_NEAR(dose.a_ml + dose.b_ml, dose.mixed_ml, 1e-9);
    EXPECT_NEAR(dose.a_g, 1.2 * dose.a_ml, 1e-9);
    EXPECT_NEAR(dose.b_g, 1.0 * dose.b_ml, 1e-9);
    EXPECT_NEAR(dose.pigment_ml, 0.02 * dose.b_ml, 1e-9);
}

TEST(WorkedDose, pressure) {
    const Pressure cold = pressure_of(pressure_in(dose_in(foam()), 0));
    EXPECT_NEAR(cold.closed_kpa, 18.8026, 5e-5);
    EXPECT_NEAR(cold.lift_n, 3249.09, 5e-3);
    const Pressure hot = pressure_of(pressure_in(dose_in(foam()), 10));
    EXPECT_NEAR(hot.closed_kpa, 22.86, 5e-3);
    EXPECT_NEAR(hot.build_for_kpa, 44.0, 0.05);
    EXPECT_NEAR(pressure_of(pressure_in(dose_in(foam(true)), 10)).build_for_kpa, 34.7, 0.05);
}

TEST(WorkedDose, pressure_over_20_k_and_a_flow_index_of_1_08) {
    // the published figures take the cup at 25 °C
    job::Foam f = foam();
    f.reference_c = 25;
    DoseIn in = dose_in(f);
    EXPECT_NEAR(pressure_of(pressure_in(in, 20)).closed_kpa, 26.861, 5e-4);
    f.overpack = 0.242;
    in.foam = f;
    EXPECT_NEAR(pressure_of(pressure_in(in, 0)).closed_kpa, 30.9214, 5e-5);
}

TEST(WorkedDose, at_1500_m) {
    const DoseIn high = dose_in(foam(), 1500);
    const PressureIn in = pressure_in(high, 0);
    EXPECT_NEAR(in.mold.poured_ml, 1487.27, 5e-3);
    EXPECT_NEAR(pressure_of(in).closed_kpa, 15.1803, 5e-5);
    const SeaLevelDose sea = sea_level_dose(in.mold, 0.15);
    EXPECT_NEAR(sea.poured_ml, 1733.07, 5e-3);
    EXPECT_NEAR(sea.closed_kpa.value(), 35.5716, 5e-5);
    EXPECT_NEAR(sea.closed_kpa.value() * area_mm2 / 1000, 6146.8, 0.05);
}

TEST(WorkedDose, least_overpack) {
    const auto low_fill = [](const job::Foam& plain, double overpack) {
        job::Foam f = plain;
        f.overpack = overpack;
        return pressure_in(dose_in(f), 0).band.low.fill;
    };
    EXPECT_LT(low_fill(foam(), 0.1777), flow_index); // 17.8 %
    EXPECT_GE(low_fill(foam(), 0.1779), flow_index);
    EXPECT_LT(low_fill(foam(true), 0.1041), flow_index); // 10.4 % after a cup
    EXPECT_GE(low_fill(foam(true), 0.1043), flow_index);
}

TEST(WorkedDose, times) {
    const DoseIn in = dose_in(foam());
    const double poured_ml = dose_of(in)->poured_ml;
    const double level_mm = 1000 * poured_ml / open_mm2;
    EXPECT_NEAR(level_mm, 13.4643, 5e-5);
    const Times times = times_of({in.profile, poured_ml, 17.6, net_mm3, 60, level_mm});
    EXPECT_NEAR(times.touch_s, 79.5, 0.05);
    EXPECT_NEAR(times.contact_s, 99.4, 0.05);
    EXPECT_NEAR(times.pour_margin_s, 50 - 20 - 17.6, 1e-9);
}

TEST(WorkedDose, push_over_time) {
    const DoseIn in = dose_in(foam());
    const GasIn gas = gas_of(pressure_in(in, 0).mold);
    const PushIn smooth{gas, Smoothstep{50, 180, 6}};
    EXPECT_DOUBLE_EQ(push_kpa(smooth, 147), 0);
    EXPECT_NEAR(push_kpa(smooth, 180), 18.8026, 5e-5);
    EXPECT_NEAR(push_kpa_s(smooth), 397.576, 1e-3);
    EXPECT_NEAR(push_kpa_s({gas, FirstOrder{50, 180, 6}}), 1000.143, 2e-3);
    const GasIn hotter = gas_of(pressure_in(in, 10).mold);
    EXPECT_NEAR(push_kpa_s({hotter, Smoothstep{50, 180, 6}}), 480.531, 1e-3);
}

// Pot life 45 s at 25 °C, mixing 20 s, pouring 0.08 L/s: usable pours of 2.000, 0.98122 and 1.24947 L.
TEST(WorkedDose, batches_by_temperature) {
    job::Foam f = foam();
    f.reference_c = 25;
    f.pot_life_s = 45;
    const auto dosed = [&](double temperature_c, std::optional<double> kj_mol, double pot_s,
                           double usable_l) {
        f.activation_kj_mol = kj_mol;
        DoseIn in = dose_in(f);
        in.profile = *profile_of({f, temperature_c, 0});
        EXPECT_NEAR(in.profile.pot_life_s, pot_s, 5e-4);
        EXPECT_NEAR((in.profile.pot_life_s - 20) * 0.08, usable_l, 1e-5 * usable_l);
        job::Shop shop;
        shop.pour_l_s = 0.08;
        in.shop = shop;
        return dose_of(in)->batches;
    };
    EXPECT_EQ(dosed(25, std::nullopt, 45, 2.000), 1);
    EXPECT_EQ(dosed(30, 50, 32.265, 0.98122), 2);
    EXPECT_EQ(dosed(30, 35.14, 35.618, 1.24947), 2);
}

} // namespace
} // namespace drawercast::casting
