// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The air around the mold: what altitude does to foam.
namespace drawercast::casting {

inline constexpr double sea_level_kpa = 101.325;

/// Still-air pressure, kPa, at a geopotential altitude of −2000 … 11 000 m:
/// p = 101.325·(1 − 0.0065·h/288.15)^5.255876. Source: ISO 2533:1975, the standard atmosphere's lowest layer.
double ambient_kpa(double altitude_m);

/// Free-rise expansion at `ambient_kpa` of a foam that expands `at_sea_level` times at 101.325 kPa:
/// E' = 1 + (E − 1)·101.325/p. The gas follows Boyle's law, the liquid keeps its volume.
double expansion_at(double at_sea_level, double ambient_kpa);

/// The other way: what a cup that rose `here` times at `ambient_kpa` would have done at sea level.
double expansion_at_sea_level(double here, double ambient_kpa);

} // namespace drawercast::casting
