// SPDX-License-Identifier: GPL-3.0-or-later
// Tables that follow from definitions and closed forms: expansion and density, the gas law of an overpacked
// mold, the Arrhenius factor. Each was worked out in double precision apart from this program (python 3.11).
#include "casting/cups.h"
#include "casting/gas.h"
#include "casting/profile.h"

#include <gtest/gtest.h>

namespace drawercast::casting {
namespace {

constexpr double kg_m3_per_lb_ft3 = 16.0184634; // from the international pound and foot
constexpr double kpa_per_psi = 6.894757;

TEST(FoamTables, expansion_of_a_density) {
    struct Row {
        double lb_ft3, kg_m3, by_1050, by_1085, by_1100, by_1120;
    };
    constexpr Row rows[] = {
        {2, 32.037, 32.775, 33.867, 34.335, 34.960}, {3, 48.055, 21.850, 22.578, 22.890, 23.306},
        {4, 64.074, 16.387, 16.934, 17.168, 17.480}, {5, 80.092, 13.110, 13.547, 13.734, 13.984},
        {6, 96.111, 10.925, 11.289, 11.445, 11.653}, {8, 128.148, 8.194, 8.467, 8.584, 8.740},
        {10, 160.185, 6.555, 6.773, 6.867, 6.992},   {12, 192.222, 5.462, 5.645, 5.723, 5.827},
        {15, 240.277, 4.370, 4.516, 4.578, 4.661},   {20, 320.369, 3.277, 3.387, 3.434, 3.496},
    };
    for (const Row& row : rows) {
        const double kg_m3 = row.lb_ft3 * kg_m3_per_lb_ft3;
        EXPECT_NEAR(kg_m3, row.kg_m3, 5.1e-4);
        // a cup whose foam has this density, at sea level
        const auto by_cup = [&](double liquid_kg_m3) {
            job::Foam foam;
            foam.density_a_g_ml = foam.density_b_g_ml = liquid_kg_m3 / 1000;
            foam.cup = job::Cup{};
            foam.cup->use = true;
            foam.cup->liquid_g *= kg_m3 / 1000 / cup_density_g_ml(*foam.cup);
            return profile_of({foam, 23, 0})->expansion;
        };
        EXPECT_NEAR(by_cup(1050), row.by_1050, 5.1e-4);
        EXPECT_NEAR(by_cup(1085), row.by_1085, 5.1e-4);
        EXPECT_NEAR(by_cup(1100), row.by_1100, 5.1e-4);
        EXPECT_NEAR(by_cup(1120), row.by_1120, 5.1e-4);
    }
}

GasIn overpacked(double expansion, double overpack) {
    GasIn gas;
    gas.ambient_kpa = 101.325;
    gas.expansion = expansion;
    gas.net_mm3 = 9e6;
    gas.poured_ml = (1 + overpack) * 9000 / expansion;
    gas.measured_k = 298.15;
    return gas;
}

TEST(FoamTables, pressure_of_an_overpacked_mold) {
    struct Row {
        double percent, by_4, by_6, by_10, by_15;
    };
    constexpr Row rows[] = {
        {5, 6.8695, 6.1409, 5.6606, 5.4476},      {10, 13.9759, 12.4071, 11.3848, 10.9344},
        {15, 21.3316, 18.8026, 17.1737, 16.4607}, {20, 28.9500, 25.3313, 23.0284, 22.0272},
        {25, 36.8455, 31.9974, 28.9500, 27.6341}, {30, 45.0333, 38.8053, 34.9397, 33.2819},
        {40, 62.3538, 52.8652, 47.1279, 44.7022}, {50, 81.0600, 67.5500, 59.6029, 56.2917},
    };
    for (const Row& row : rows) {
        EXPECT_NEAR(gas_kpa(overpacked(4, row.percent / 100)), row.by_4, 5.1e-5);
        EXPECT_NEAR(gas_kpa(overpacked(6, row.percent / 100)), row.by_6, 5.1e-5);
        EXPECT_NEAR(gas_kpa(overpacked(10, row.percent / 100)), row.by_10, 5.1e-5);
        EXPECT_NEAR(gas_kpa(overpacked(15, row.percent / 100)), row.by_15, 5.1e-5);
    }
    EXPECT_NEAR(gas_kpa(overpacked(6, 0.15)) / kpa_per_psi, 2.727, 5e-4);
    EXPECT_NEAR(gas_kpa(overpacked(4, 0.50)) / kpa_per_psi, 11.757, 5e-4);
    EXPECT_NEAR(gas_kpa(overpacked(15, 0.05)) / kpa_per_psi, 0.790, 5e-4);
}

TEST(FoamTables, pressure_of_a_hotter_mold) {
    constexpr double rows[][2] = {{0, 18.803},  {5, 20.817},  {10, 22.832},
                                  {20, 26.861}, {30, 30.890}, {50, 38.948}};
    for (const auto& [hotter_k, kpa] : rows) {
        GasIn gas = overpacked(6, 0.15);
        gas.hotter_k = hotter_k;
        EXPECT_NEAR(gas_kpa(gas), kpa, 5.1e-4);
    }
}

TEST(FoamTables, pressure_of_a_sea_level_dose_poured_at_1500_m) {
    GasIn gas = overpacked(6, 0.15);
    gas.ambient_kpa = 84.5560;
    gas.expansion = 6.99159;
    EXPECT_NEAR(gas_kpa(gas), 35.572, 1e-3);
    gas.poured_ml = 1.15 * 9000 / 6.99159;
    EXPECT_NEAR(gas_kpa(gas), 15.1803, 1e-4);
}

TEST(FoamTables, time_factor_by_activation_energy) {
    constexpr double temperatures[] = {10, 15, 18, 20, 22, 28, 30, 35};
    struct Row {
        double kj_mol;
        double factor[8];
    };
    constexpr Row rows[] = {
        {27.04, {1.7822, 1.4602, 1.2999, 1.2045, 1.1173, 0.8970, 0.8353, 0.7019}},
        {35.14, {2.1190, 1.6355, 1.4061, 1.2735, 1.1550, 0.8683, 0.7915, 0.6313}},
        {41.3, {2.4171, 1.7828, 1.4927, 1.3286, 1.1845, 0.8471, 0.7597, 0.5824}},
        {50, {2.9110, 2.0137, 1.6241, 1.4106, 1.2275, 0.8180, 0.7170, 0.5197}},
        {60, {3.6046, 2.3163, 1.7895, 1.5111, 1.2789, 0.7858, 0.6709, 0.4559}},
    };
    for (const Row& row : rows)
        for (int i = 0; i < 8; ++i)
            EXPECT_NEAR(time_factor(temperatures[i], 25, row.kj_mol), row.factor[i], 5.1e-5) << row.kj_mol;
    constexpr double doubling[] = {2.8284, 2.0000, 1.6245, 1.4142, 1.2311, 0.8123, 0.7071, 0.5000};
    for (int i = 0; i < 8; ++i)
        EXPECT_NEAR(time_factor(temperatures[i], 25, std::nullopt), doubling[i], 5.1e-5);
}

} // namespace
} // namespace drawercast::casting
