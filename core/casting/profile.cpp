// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/profile.h"

#include "casting/ambient.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::casting {
namespace {

constexpr double zero_celsius_k = 273.15;
constexpr double gas_constant_kj_mol_k = 8.314462618e-3; // SI 2019, exact

Expected<double> cup_expansion(const job::Cup& cup, double liquid_g_ml) {
    const double risen = liquid_g_ml / cup_density_g_ml(cup);
    if (!(risen > 1))
        return Problem{"cup-unusable", "/foam/cup", "the cup's foam is not lighter than its liquid",
                       "check its diameter, liquid and risen height, or do not use the cup"};
    if (!(cup.start_s < cup.half_s && cup.half_s < cup.full_s))
        return Problem{"cup-unusable", "/foam/cup",
                       "the cup's start, half and full rise are not in this order",
                       "check its times, or do not use the cup"};
    return risen;
}

} // namespace

double time_factor(double temperature_c, double reference_c, std::optional<double> activation_kj_mol) {
    if (!activation_kj_mol) return std::exp2((reference_c - temperature_c) / 10);
    return std::exp(*activation_kj_mol / gas_constant_kj_mol_k *
                    (1 / (zero_celsius_k + temperature_c) - 1 / (zero_celsius_k + reference_c)));
}

double cup_density_g_ml(const job::Cup& cup) {
    return 4000 * cup.liquid_g / (std::numbers::pi * cup.diameter_mm * cup.diameter_mm * cup.risen_mm);
}

Expected<Profile> profile_of(const ProfileIn& in) {
    const job::Foam& foam = *in.foam;
    Profile out;
    out.ambient_kpa = ambient_kpa(in.altitude_m);
    out.liquid_g_ml = (foam.ratio_a * foam.density_a_g_ml + foam.ratio_b * foam.density_b_g_ml) /
                      (foam.ratio_a + foam.ratio_b);
    out.expansion_sea_level = foam.expansion;
    out.measured_k = zero_celsius_k + foam.reference_c;

    const double factor = time_factor(in.temperature_c, foam.reference_c, foam.activation_kj_mol);
    out.mix_s = foam.mix_s;
    out.pot_life_s = foam.pot_life_s * factor;
    out.rise_s = foam.rise_s * factor;
    out.demold_min = std::max(foam.demold_min, foam.demold_min * factor);

    if (foam.cup && foam.cup->use) {
        const auto here = cup_expansion(*foam.cup, out.liquid_g_ml);
        if (!here) return here.error();
        out.by_cup = true;
        out.uncertainty = cup_uncertainty;
        out.expansion_sea_level = expansion_at_sea_level(*here, out.ambient_kpa);
        out.measured_k = zero_celsius_k + foam.cup->parts_c;
        out.cup = CupTimes{foam.cup->start_s, foam.cup->half_s, foam.cup->full_s};
        out.rise_s = foam.cup->full_s;
    }
    const auto here = [&](double at_sea_level) { return expansion_at(at_sea_level, out.ambient_kpa); };
    out.expansion = here(out.expansion_sea_level);
    out.expansion_low = here(out.expansion_sea_level * (1 - out.uncertainty));
    out.expansion_high = here(out.expansion_sea_level * (1 + out.uncertainty));
    return out;
}

} // namespace drawercast::casting
