// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/say.h"

#include "base/number.h"
#include "base/units.h"

#include <cmath>

namespace drawercast::plan {

namespace {

bool metric(job::DisplayUnits units) { return units == job::DisplayUnits::mm; }

/// `digits` significant ones, but never fewer than the whole number needs.
std::string figures(double value, int digits) {
    if (value != 0 && std::abs(value) >= std::pow(10, digits)) return fixed(value, 0);
    return rounded_text(value, digits);
}

} // namespace

LengthUnit length_unit(job::DisplayUnits units) {
    switch (units) {
    case job::DisplayUnits::inch:
        return LengthUnit::inch;
    case job::DisplayUnits::inch_32:
        return LengthUnit::inch_32;
    case job::DisplayUnits::mm:
        break;
    }
    return LengthUnit::mm;
}

std::string fixed(double value, int decimals) {
    const double scale = std::pow(10, decimals);
    const auto ticks = std::llround(std::abs(value) * scale);
    std::string digits = std::to_string(ticks);
    if (decimals > 0) {
        const auto places = static_cast<std::size_t>(decimals);
        if (digits.size() <= places) digits.insert(0, places + 1 - digits.size(), '0');
        digits.insert(digits.size() - places, ".");
    }
    return value < 0 && ticks != 0 ? "-" + digits : digits;
}

std::string say_length(double mm, job::DisplayUnits units) { return length_text(mm, length_unit(units)); }
std::string say_length_bare(double mm, job::DisplayUnits units) {
    return length_digits(mm, length_unit(units));
}

std::string say_mass_g(double g, job::DisplayUnits units) {
    if (metric(units)) return g < 1000 ? figures(g, 3) + " g" : figures(g / 1000, 3) + " kg";
    return g < units::g_per_pound ? figures(g / units::g_per_ounce, 3) + " oz"
                                  : figures(g / units::g_per_pound, 3) + " lb";
}

std::string say_pressure_kpa(double kpa, job::DisplayUnits units) {
    return metric(units) ? fixed(kpa, 1) + " kPa" : fixed(kpa / units::kpa_per_psi, 2) + " psi";
}

std::string say_volume_ml(double ml, job::DisplayUnits units) {
    if (metric(units)) return ml < 10000 ? fixed(ml, 0) + " mL" : fixed(ml / 1000, 2) + " L";
    return ml < units::ml_per_quart ? figures(ml / units::ml_per_fluid_ounce, 3) + " fl oz"
                                    : fixed(ml / units::ml_per_quart, 2) + " qt";
}

std::string say_density_kg_m3(double kg_m3, job::DisplayUnits units) {
    return metric(units) ? fixed(kg_m3, 0) + " kg/m³"
                         : fixed(kg_m3 / units::kg_m3_per_pound_per_cubic_foot, 1) + " lb/ft³";
}

std::string say_temperature_c(double c, job::DisplayUnits units) {
    return metric(units) ? fixed(c, 0) + " °C" : fixed(units::fahrenheit(c), 0) + " °F";
}

std::string say_altitude_m(double m, job::DisplayUnits units) {
    return metric(units) ? fixed(m, 0) + " m" : fixed(m * 1000 / units::mm_per_foot, 0) + " ft";
}

std::string say_force_n(double n, job::DisplayUnits units) {
    return metric(units) ? figures(n, 3) + " N" : figures(n / units::n_per_pound_force, 3) + " lbf";
}

} // namespace drawercast::plan
