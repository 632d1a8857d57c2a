// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/band.h"
#include "casting/checks.h"
#include "casting/dose.h"
#include "casting/pressure.h"
#include "casting/times.h"

#include <gtest/gtest.h>

#include <numbers>

namespace drawercast::casting {
namespace {

constexpr double net_mm3 = 9e6;
constexpr double area_mm2 = 172800;

DoseIn dose_in(job::Foam foam = {}, double net = net_mm3, double area = area_mm2, double altitude_m = 0) {
    job::Shop shop;
    shop.altitude_m = altitude_m;
    return {*profile_of({foam, 23, altitude_m}), foam, shop, net, area};
}

job::Foam by_cup() {
    job::Foam foam;
    foam.cup = job::Cup{};
    foam.cup->use = true;
    foam.cup->liquid_g = 1.11 / 6 * std::numbers::pi * 40 * 40 * 100 / 1000;
    return foam;
}

BandIn band_in(const DoseIn& in) {
    return {in.profile, dose_of(in)->poured_ml, in.net_mm3, in.insert_area_mm2, in.foam->mold_hotter_k, 0};
}

TEST(Dose, automatic_overpack_starts_from_practice_and_rises_by_whole_percents) {
    struct Row {
        const char* name;
        job::Foam foam;
        double net_mm3;
        double overpack;
    };
    const Row rows[] = {
        {"label, deep mold", job::Foam{}, 9e6, 0.20}, {"label, shallow mold", job::Foam{}, 4e6, 0.20},
        {"label, thin mold", job::Foam{}, 2e6, 0.22}, {"cup, deep mold", by_cup(), 9e6, 0.15},
        {"cup, thin mold", by_cup(), 1.5e6, 0.16},
    };
    for (const Row& row : rows) {
        const DoseIn in = dose_in(row.foam, row.net_mm3);
        const Dose dose = *dose_of(in);
        EXPECT_DOUBLE_EQ(dose.overpack, row.overpack) << row.name;
        EXPECT_TRUE(dose.overpack_auto);
        job::Foam by_hand = row.foam;
        by_hand.overpack = 0.5;
        EXPECT_DOUBLE_EQ(automatic_overpack(dose_in(by_hand, row.net_mm3)), row.overpack) << row.name;
        EXPECT_GE(band_of(band_in(in)).low.fill, flow_index) << row.name;
        if (row.overpack <= (dose.by_cup ? 0.15 : 0.20)) continue;
        job::Foam less = row.foam; // one percent less is short
        less.overpack = row.overpack - 0.01;
        EXPECT_LT(band_of(band_in(dose_in(less, row.net_mm3))).low.fill, flow_index) << row.name;
    }
}

TEST(Dose, says_so_where_no_overpack_passes_both_ends) {
    EXPECT_FALSE(dose_of(dose_in())->none_passes);
    const DoseIn thin = dose_in({}, 1.2e6);
    const Dose dose = *dose_of(thin);
    EXPECT_TRUE(dose.none_passes);
    const Band band = band_of(band_in(thin));
    EXPECT_GE(band.low.fill, flow_index);
    EXPECT_GT(band.high.fill, hard_fill);
}

TEST(Dose, overpack_set_by_the_maker_stands) {
    job::Foam foam;
    foam.overpack = 0.05;
    const Dose dose = *dose_of(dose_in(foam));
    EXPECT_DOUBLE_EQ(dose.overpack, 0.05);
    EXPECT_FALSE(dose.overpack_auto);
    EXPECT_FALSE(dose.none_passes);
}

TEST(Dose, amounts_follow_from_each_other) {
    job::Foam foam;
    foam.ratio_b = 2;
    const DoseIn in = dose_in(foam);
    const Dose dose = *dose_of(in);
    EXPECT_NEAR(dose.poured_ml, 1.2 * 9000 / 6, 1e-9);
    EXPECT_NEAR(dose.mixed_ml, dose.poured_ml * 1.02 + dose.batches * dose.bucket_left_ml, 1e-9);
    EXPECT_NEAR(dose.b_ml, 2 * dose.a_ml, 1e-9);
    EXPECT_NEAR(dose.a_ml + dose.b_ml, dose.mixed_ml, 1e-9);
    EXPECT_NEAR(dose.insert_g, dose.molded_kg_m3 * 9, 1e-9);
    EXPECT_NEAR(dose.molded_kg_m3, 1.2 * dose.free_rise_kg_m3, 1e-9);
}

TEST(Dose, less_liquid_does_at_altitude) {
    const double low = dose_of(dose_in())->poured_ml;
    const DoseIn in = dose_in({}, net_mm3, area_mm2, 2000);
    EXPECT_LT(dose_of(in)->poured_ml, low);
    const SeaLevelDose sea = sea_level_dose(band_in(in), 0.20);
    EXPECT_NEAR(sea.poured_ml, low, 1e-9);
    EXPECT_GT(*sea.closed_kpa, 2 * gas_kpa(gas_of(band_in(in))));
    EXPECT_GT(sea.fill, 1.4);
}

TEST(Dose, refusals) {
    struct Row {
        const char* name;
        void (*change)(DoseIn&);
    };
    const Row rows[] = {
        {"no room", [](DoseIn& in) { in.net_mm3 = 0; }},
        {"overlapping blocks took more than there is", [](DoseIn& in) { in.net_mm3 = -5e4; }},
        {"liquid alone fills the mold",
         [](DoseIn& in) { in.foam.edit([](job::Foam& f) { f.overpack = 5.1; }); }},
        {"and at the high end of the band",
         [](DoseIn& in) { in.foam.edit([](job::Foam& f) { f.overpack = 4.98; }); }},
        {"foam that does not expand",
         [](DoseIn& in) { in.profile.expansion = in.profile.expansion_low = 1.1; }},
        {"a mold as thin as its own uncertainty", [](DoseIn& in) { in.net_mm3 = 8e4; }},
        {"overpack below 0", [](DoseIn& in) { in.foam.edit([](job::Foam& f) { f.overpack = -0.1; }); }},
        {"no container holds it",
         [](DoseIn& in) { in.shop.edit([](job::Shop& s) { s.container_ml = 60; }); }},
    };
    for (const Row& row : rows) {
        DoseIn in = dose_in();
        row.change(in);
        const auto dose = dose_of(in);
        ASSERT_FALSE(dose) << row.name;
        EXPECT_EQ(dose.error().code, "dose-refused") << row.name;
        EXPECT_FALSE(dose.error().fix.empty()) << row.name;
    }
}

TEST(Band, ends_lie_on_both_sides) {
    for (const job::Foam& foam : {job::Foam{}, by_cup()}) {
        const Band band = band_of(band_in(dose_in(foam)));
        EXPECT_LT(band.low.fill, band.expected.fill);
        EXPECT_LT(band.expected.fill, band.high.fill);
        EXPECT_LT(band.low.closed_kpa, band.expected.closed_kpa);
        EXPECT_LT(band.expected.closed_kpa, band.high.closed_kpa);
        EXPECT_NEAR(band.low.net_mm3, net_mm3 + 86400, 1e-6);
        EXPECT_NEAR(band.high.net_mm3, net_mm3 - 86400, 1e-6);
    }
}

PressureIn pressure_in(const DoseIn& in, double factor = 1.5) {
    const BandIn mold = band_in(in);
    return {mold, band_of(mold), factor};
}

TEST(Pressure, more_foam_pushes_harder) {
    double last = -1;
    for (const double overpack : {0.0, 0.1, 0.2, 0.4, 0.8}) {
        job::Foam foam;
        foam.overpack = overpack;
        const Pressure pressure = pressure_of(pressure_in(dose_in(foam)));
        EXPECT_GT(pressure.closed_kpa, last);
        EXPECT_LE(pressure.low_kpa, pressure.closed_kpa);
        EXPECT_GE(pressure.build_for_kpa, pressure.high_kpa);
        last = pressure.closed_kpa;
    }
}

TEST(Pressure, is_that_of_boyle_where_nothing_is_hotter) {
    job::Foam foam;
    foam.mold_hotter_k = 0;
    foam.overpack = 0; // just filled at ambient pressure
    const Pressure pressure = pressure_of(pressure_in(dose_in(foam)));
    EXPECT_NEAR(pressure.closed_kpa, 0, 1e-12);
    EXPECT_DOUBLE_EQ(pressure.low_kpa, 0); // would be under it
}

TEST(Pressure, builds_for_the_greater_of_factor_and_high_end) {
    const DoseIn in = dose_in();
    const Pressure low_factor = pressure_of(pressure_in(in, 1));
    const Pressure high_factor = pressure_of(pressure_in(in, 4));
    EXPECT_GT(low_factor.build_for_kpa, low_factor.high_kpa);
    EXPECT_DOUBLE_EQ(high_factor.build_for_kpa, 4 * high_factor.closed_kpa);
    EXPECT_DOUBLE_EQ(low_factor.lift_n, low_factor.closed_kpa * area_mm2 / 1000);
}

TEST(Pressure, a_cup_lowers_what_must_be_built) {
    job::Foam label;
    label.overpack = 0.2;
    job::Foam cup = by_cup();
    cup.overpack = 0.2;
    const Pressure by_label = pressure_of(pressure_in(dose_in(label)));
    const Pressure with_cup = pressure_of(pressure_in(dose_in(cup)));
    EXPECT_NEAR(by_label.closed_kpa, with_cup.closed_kpa, 1e-9);
    EXPECT_LT(with_cup.build_for_kpa, by_label.build_for_kpa - 5);
}

TEST(Pressure, air_shut_in_adds_to_it) {
    BandIn mold = band_in(dose_in());
    const double without = gas_kpa(gas_of(mold));
    mold.air_ml = 100;
    // 100 mL at ambient pressure squeezed into the gas space of the mold
    const double space = mold.net_mm3 / 1000 - mold.poured_ml;
    const double hotter = (296.15 + 10) / 296.15;
    EXPECT_NEAR(gas_kpa(gas_of(mold)) - without, 101.325 * 100 / space * hotter, 1e-9);
}

// ---- what is said of it ----
std::vector<layout::Check> checks_of(const DoseIn& in) {
    const Dose dose = *dose_of(in);
    const BandIn mold = band_in(in);
    const Times times = times_of({in.profile, dose.poured_ml, dose.pour_s, in.net_mm3, 60, 13});
    return dose_checks({mold, dose, band_of(mold), times, in.shop->altitude_m, in.shop->people});
}

std::vector<std::string> codes(const std::vector<layout::Check>& checks) {
    std::vector<std::string> out;
    for (const auto& check : checks) out.emplace_back(layout::text_of(check.code));
    return out;
}

TEST(DoseChecks, table) {
    struct Row {
        const char* name;
        void (*change)(job::Foam&, job::Shop&);
        std::vector<std::string> codes;
        double value, limit; ///< of the first
    };
    const Row rows[] = {
        {"all well", [](job::Foam&, job::Shop&) {}, {}, 0, 0},
        {"short",
         [](job::Foam& f, job::Shop&) { f.overpack = 0.1; },
         {"short-if-low"},
         0.9 * 1.1 * 9e6 / 9086400,
         1.05},
        {"hard",
         [](job::Foam& f, job::Shop&) { f.overpack = 0.3; },
         {"hard-if-high"},
         1.1 * 1.3 * 9e6 / 8913600,
         1.40},
        {"too few people",
         [](job::Foam&, job::Shop& s) { s.container_ml = 3000; },
         {"too-many-batches"},
         2,
         1},
        {"enough people",
         [](job::Foam&, job::Shop& s) {
             s.container_ml = 3000;
             s.people = 2;
         },
         {},
         0,
         0},
        {"mixing takes the pot life",
         [](job::Foam& f, job::Shop&) { f.mix_s = 50; },
         {"pour-late"},
         50 + 18.36,
         50},
        {"a slow pour of its own", [](job::Foam&, job::Shop& s) { s.pour_s = 31; }, {"pour-late"}, 51, 50},
        {"on a mountain",
         [](job::Foam&, job::Shop& s) { s.altitude_m = 1500; },
         {"dose-altitude"},
         1500,
         46.5},
        {"on a hill", [](job::Foam&, job::Shop& s) { s.altitude_m = 150; }, {}, 0, 0},
    };
    for (const Row& row : rows) {
        job::Foam foam;
        job::Shop shop;
        row.change(foam, shop);
        DoseIn in = dose_in(foam, net_mm3, area_mm2, shop.altitude_m);
        in.shop = shop;
        const auto checks = checks_of(in);
        ASSERT_EQ(codes(checks), row.codes) << row.name;
        if (checks.empty()) continue;
        EXPECT_NEAR(checks[0].value, row.value, 1e-9 * (1 + row.value)) << row.name;
        EXPECT_NEAR(checks[0].limit, row.limit, row.limit > 40 && row.value > 1000 ? 1.5 : 1e-12) << row.name;
    }
}

TEST(DoseChecks, no_cup_is_a_note_once) {
    EXPECT_EQ(codes(foam_checks(*profile_of({job::Foam{}, 23, 0}))), std::vector<std::string>{"no-cup"});
    EXPECT_TRUE(foam_checks(*profile_of({by_cup(), 23, 0})).empty());
}

TEST(DoseChecks, a_refused_dose_must_be_mended) {
    const layout::Check check = dose_refused_check(5e4);
    EXPECT_EQ(check.code, layout::Code::dose_refused);
    EXPECT_EQ(check.severity, layout::Severity::mend);
    EXPECT_DOUBLE_EQ(check.value, 50);
}

} // namespace
} // namespace drawercast::casting
