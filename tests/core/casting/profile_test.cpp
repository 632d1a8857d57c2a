// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/ambient.h"
#include "casting/checks.h"
#include "casting/profile.h"

#include <gtest/gtest.h>

#include <numbers>
#include <optional>

namespace drawercast::casting {
namespace {

job::Foam with_cup(double risen_times) {
    job::Foam foam;
    foam.cup = job::Cup{};
    foam.cup->use = true;
    foam.cup->diameter_mm = 80;
    foam.cup->risen_mm = 100;
    foam.cup->liquid_g = 1.11 / risen_times * std::numbers::pi * 40 * 40 * 100 / 1000;
    return foam;
}

TEST(Profile, by_the_label_where_expansion_was_stated) {
    const Profile profile = *profile_of({job::Foam{}, 23, 0});
    EXPECT_FALSE(profile.by_cup);
    EXPECT_DOUBLE_EQ(profile.expansion, 6);
    EXPECT_DOUBLE_EQ(profile.expansion_low, 5.4);
    EXPECT_DOUBLE_EQ(profile.expansion_high, 6.6);
    EXPECT_DOUBLE_EQ(profile.liquid_g_ml, 1.11);
    EXPECT_DOUBLE_EQ(profile.measured_k, 296.15);
    EXPECT_DOUBLE_EQ(profile.pot_life_s, 50);
    EXPECT_FALSE(profile.cup);
}

TEST(Profile, both_ends_of_the_band_are_taken_to_the_altitude) {
    const Profile profile = *profile_of({job::Foam{}, 23, 1500});
    EXPECT_NEAR(profile.expansion_low, expansion_at(5.4, ambient_kpa(1500)), 1e-12);
    EXPECT_NEAR(profile.expansion_high, expansion_at(6.6, ambient_kpa(1500)), 1e-12);
}

TEST(Profile, altitude_makes_lighter_foam) {
    double last = 0;
    for (const double altitude : {-300.0, 0.0, 500.0, 1500.0, 4000.0}) {
        const double expansion = profile_of({job::Foam{}, 23, altitude})->expansion;
        EXPECT_GT(expansion, last);
        last = expansion;
    }
}

TEST(Profile, liquid_density_follows_the_ratio_by_volume) {
    job::Foam foam;
    foam.ratio_a = 1;
    foam.ratio_b = 2;
    EXPECT_NEAR(profile_of({foam, 23, 0})->liquid_g_ml, (1.20 + 2 * 1.02) / 3, 1e-15);
}

TEST(Profile, colder_parts_take_longer_but_demold_never_comes_before_the_label) {
    const Profile cold = *profile_of({job::Foam{}, 13, 0});
    EXPECT_DOUBLE_EQ(cold.pot_life_s, 100);
    EXPECT_DOUBLE_EQ(cold.rise_s, 360);
    EXPECT_DOUBLE_EQ(cold.demold_min, 240);
    const Profile warm = *profile_of({job::Foam{}, 33, 0});
    EXPECT_DOUBLE_EQ(warm.pot_life_s, 25);
    EXPECT_DOUBLE_EQ(warm.demold_min, 120);
    EXPECT_DOUBLE_EQ(warm.mix_s, 20); // hands are not foam
}

TEST(Profile, cup_says_what_the_foam_does_here_today) {
    job::Foam foam = with_cup(7);
    foam.cup->parts_c = 18;
    const Profile profile = *profile_of({foam, 18, 1500});
    EXPECT_TRUE(profile.by_cup);
    EXPECT_NEAR(profile.expansion, 7, 1e-12); // in this air
    EXPECT_NEAR(profile.expansion_sea_level, 1 + 6 * ambient_kpa(1500) / 101.325, 1e-12);
    EXPECT_DOUBLE_EQ(profile.uncertainty, 0.04);
    EXPECT_DOUBLE_EQ(profile.measured_k, 291.15);
    EXPECT_DOUBLE_EQ(profile.rise_s, 180); // the cup's, not scaled
    EXPECT_TRUE(profile.cup.has_value());
}

TEST(Profile, cup_not_in_use_changes_nothing) {
    job::Foam foam = with_cup(7);
    foam.cup->use = false;
    EXPECT_EQ(*profile_of({foam, 23, 0}), *profile_of({job::Foam{}, 23, 0}));
}

TEST(Profile, a_cup_far_from_the_label_is_doubted) {
    const auto said = [](double risen_times) -> std::optional<layout::Severity> {
        for (const auto& check : foam_checks(*profile_of({with_cup(risen_times), 23, 0})))
            if (check.code == layout::Code::cup_far) return check.severity;
        return std::nullopt;
    };
    EXPECT_FALSE(said(6));
    EXPECT_FALSE(said(6 * 1.25));
    EXPECT_FALSE(said(6 / 1.25));
    EXPECT_EQ(said(6 * 1.5), layout::Severity::look);
    EXPECT_EQ(said(6 / 1.5), layout::Severity::look);
    EXPECT_EQ(said(60), layout::Severity::mend) << "10 g on the scale, 100 typed wrongly";
    EXPECT_EQ(said(3), layout::Severity::mend);
}

TEST(Profile, refused_cups) {
    struct Row {
        const char* name;
        void (*spoil)(job::Cup&);
    };
    const Row rows[] = {
        {"did not rise", [](job::Cup& cup) { cup.risen_mm = 10; }},
        {"half before start", [](job::Cup& cup) { cup.half_s = 20; }},
        {"full at half", [](job::Cup& cup) { cup.full_s = cup.half_s; }},
    };
    for (const Row& row : rows) {
        job::Foam foam = with_cup(6);
        row.spoil(*foam.cup);
        const auto profile = profile_of({foam, 23, 0});
        ASSERT_FALSE(profile) << row.name;
        EXPECT_EQ(profile.error().code, "cup-unusable") << row.name;
    }
}

TEST(Profile, foam_that_starts_in_the_cup_ends_the_pouring) {
    job::Foam foam = with_cup(6);
    foam.cup->start_s = 30, foam.cup->half_s = 90, foam.cup->full_s = 180;
    EXPECT_DOUBLE_EQ(profile_of({foam, 23, 0})->pot_life_s, 30);
    foam.cup->start_s = 70;
    EXPECT_DOUBLE_EQ(profile_of({foam, 23, 0})->pot_life_s, 50) << "never later than the label";
}

TEST(Profile, a_cup_of_a_colder_day_is_quicker_today_and_never_slower) {
    job::Foam foam = with_cup(6);
    foam.cup->start_s = 60, foam.cup->half_s = 110, foam.cup->full_s = 220;
    foam.cup->parts_c = 18;
    const Profile warm = *profile_of({foam, 28, 0});
    EXPECT_EQ(warm.cup, (CupTimes{30, 55, 110})) << "half of it for ten degrees";
    EXPECT_DOUBLE_EQ(warm.rise_s, 110);
    EXPECT_DOUBLE_EQ(warmer_k(warm), 10);
    EXPECT_EQ(profile_of({foam, 8, 0})->cup, (CupTimes{60, 110, 220}));
}

TEST(Profile, warmer_gas_pushes_harder_and_colder_gas_fills_less) {
    const Profile warm = *profile_of({job::Foam{}, 35, 0});
    EXPECT_DOUBLE_EQ(warmer_k(warm), 12);
    EXPECT_DOUBLE_EQ(warm.expansion_low, 5.4);
    const Profile cold = *profile_of({job::Foam{}, 13, 0});
    EXPECT_DOUBLE_EQ(warmer_k(cold), 0);
    EXPECT_DOUBLE_EQ(cold.expansion, 6);
    EXPECT_NEAR(cold.expansion_low, 1 + 4.4 * 286.15 / 296.15, 1e-12); // Gay-Lussac's law
}

} // namespace
} // namespace drawercast::casting
