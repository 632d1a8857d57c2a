// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/profile.h"

#include "base/units.h"
#include "casting/ambient.h"
#include "casting/cups.h"

#include <algorithm>
#include <cmath>

namespace drawercast::casting {
namespace {

constexpr double gas_constant_kj_mol_k = 8.314462618e-3; // SI 2019, exact

} // namespace

double time_factor(double temperature_c, double reference_c, std::optional<double> activation_kj_mol) {
    if (!activation_kj_mol) return std::exp2((reference_c - temperature_c) / 10);
    return std::exp(
        *activation_kj_mol / gas_constant_kj_mol_k *
        (1 / (units::zero_celsius_k + temperature_c) - 1 / (units::zero_celsius_k + reference_c)));
}

double warmer_k(const Profile& profile) { return std::max(0.0, profile.today_k - profile.measured_k); }

Expected<Profile> profile_of(const ProfileIn& in) {
    const job::Foam& foam = *in.foam;
    Profile out;
    out.ambient_kpa = ambient_kpa(in.altitude_m);
    out.liquid_g_ml = (foam.ratio_a * foam.density_a_g_ml + foam.ratio_b * foam.density_b_g_ml) /
                      (foam.ratio_a + foam.ratio_b);
    out.expansion_sea_level = out.label_expansion = foam.expansion;
    out.measured_k = units::zero_celsius_k + foam.reference_c;

    const double factor = time_factor(in.temperature_c, foam.reference_c, foam.activation_kj_mol);
    out.mix_s = foam.mix_s;
    out.pot_life_s = foam.pot_life_s * factor;
    out.rise_s = foam.rise_s * factor;
    out.demold_min = std::max(foam.demold_min, foam.demold_min * factor);

    if (const auto cups = cups_in_use(foam); !cups.empty()) {
        const auto mean = mean_of_cups(cups, out.liquid_g_ml);
        if (!mean) return mean.error();
        out.by_cup = true;
        out.uncertainty = std::max(cup_uncertainty, mean->spread);
        out.expansion_sea_level = expansion_at_sea_level(mean->expansion, out.ambient_kpa);
        out.measured_k = units::zero_celsius_k + mean->parts_c;
        const double quicker =
            std::min(1.0, time_factor(in.temperature_c, mean->parts_c, foam.activation_kj_mol));
        out.cup = CupTimes{mean->start_s * quicker, mean->half_s * quicker, mean->full_s * quicker};
        out.pot_life_s = std::min(out.pot_life_s, out.cup->start_s);
        out.rise_s = out.cup->full_s;
    }
    out.today_k = units::zero_celsius_k + in.temperature_c;
    const auto here = [&](double at_sea_level) { return expansion_at(at_sea_level, out.ambient_kpa); };
    out.expansion = here(out.expansion_sea_level);
    const double colder = std::min(1.0, out.today_k / out.measured_k);
    out.expansion_low = 1 + (here(out.expansion_sea_level * (1 - out.uncertainty)) - 1) * colder;
    out.expansion_high = here(out.expansion_sea_level * (1 + out.uncertainty));
    return out;
}

} // namespace drawercast::casting
