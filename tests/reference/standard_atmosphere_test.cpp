// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of ISO 2533:1975 (the same as the U.S. Standard Atmosphere 1976), geopotential altitude, and what
// follows for a foam of expansion 6 at sea level by E' = 1 + (E − 1)·p0/p.
#include "casting/ambient.h"

#include <gtest/gtest.h>

namespace drawercast::casting {
namespace {

struct Row {
    double altitude_m;
    double pressure_pa;
    double expansion;
    double free_rise_kg_m3; // of a liquid of 1100 kg/m³
};

constexpr Row rows[] = {
    {0, 101325.0, 6.0000, 183.333},   {250, 98357.5, 6.1509, 178.837},  {500, 95460.8, 6.3072, 174.405},
    {1000, 89874.6, 6.6370, 165.737}, {1500, 84556.0, 6.9916, 157.332}, {2000, 79495.2, 7.3730, 149.192},
    {2500, 74682.5, 7.7837, 141.321}, {3000, 70108.5, 8.2263, 133.718},
};

TEST(StandardAtmosphere, pressure_and_expansion_by_altitude) {
    for (const Row& row : rows) {
        const double kpa = ambient_kpa(row.altitude_m);
        EXPECT_NEAR(1000 * kpa, row.pressure_pa, 0.06) << row.altitude_m;
        EXPECT_NEAR(expansion_at(6, kpa), row.expansion, 5.1e-5) << row.altitude_m;
        EXPECT_NEAR(1100 / expansion_at(6, kpa), row.free_rise_kg_m3, 5.1e-4) << row.altitude_m;
        EXPECT_NEAR(expansion_at_sea_level(expansion_at(6, kpa), kpa), 6, 1e-12);
    }
}

} // namespace
} // namespace drawercast::casting
