// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// US customary units in SI. Exact where "exact"; source: NIST Handbook 44, Appendix C (1 in = 25.4 mm, 1 lb
/// = 0.45359237 kg, 1 gal = 231 in³), standard gravity 9.80665 m/s².
namespace drawercast::units {

inline constexpr double mm2_per_m2 = 1e6;                         // exact, SI
inline constexpr double mm_per_inch = 25.4;                       // exact
inline constexpr double mm_per_foot = 12 * mm_per_inch;           // exact
inline constexpr double g_per_pound = 453.59237;                  // exact
inline constexpr double g_per_ounce = g_per_pound / 16;           // exact
inline constexpr double ml_per_cubic_inch = 16.387064;            // exact
inline constexpr double ml_per_gallon = 231 * ml_per_cubic_inch;  // exact, US liquid
inline constexpr double ml_per_quart = ml_per_gallon / 4;         // exact
inline constexpr double ml_per_fluid_ounce = ml_per_gallon / 128; // exact
inline constexpr double standard_gravity = 9.80665;               // m/s², exact
inline constexpr double n_per_pound_force = g_per_pound / 1000 * standard_gravity;
inline constexpr double kpa_per_psi = n_per_pound_force / (mm_per_inch * mm_per_inch) * 1000;
inline constexpr double kg_m3_per_pound_per_cubic_foot =
    g_per_pound / 1000 / (mm_per_foot * mm_per_foot * mm_per_foot * 1e-9);

inline constexpr double zero_celsius_k = 273.15; // exact, SI

constexpr double fahrenheit(double celsius) { return celsius * 9 / 5 + 32; }
constexpr double celsius(double fahrenheit) { return (fahrenheit - 32) * 5 / 9; }

} // namespace drawercast::units
