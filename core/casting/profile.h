// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/foam.h"
#include "job/shared.h"

#include <optional>

namespace drawercast::casting {

/// How far the real expansion may lie from the stated one, as a share of it (our guess).
inline constexpr double label_uncertainty = 0.10;
inline constexpr double cup_uncertainty = 0.04;

struct ProfileIn {
    job::Shared<job::Foam> foam;
    double temperature_c = 23; ///< of the shop and the parts
    double altitude_m = 0;
    bool operator==(const ProfileIn&) const = default;
};

/// What a test cup showed, seconds from the start of mixing, made shorter where its parts were colder than
/// today's; never longer.
struct CupTimes {
    double start_s = 0;
    double half_s = 0;
    double full_s = 0;
    bool operator==(const CupTimes&) const = default;
};

/// The foam as it is today: by its label, or by a test cup that is in use.
struct Profile {
    double ambient_kpa = 0;
    double expansion_sea_level = 0; ///< E
    double expansion = 0;           ///< E', at this altitude
    double expansion_low = 0; ///< E(1 − u) and E(1 + u), each at this altitude; the low one of colder gas
    double expansion_high = 0;
    double uncertainty = label_uncertainty; ///< u
    bool by_cup = false;
    double liquid_g_ml = 0;  ///< mixed density ρ_L = (aρ_A + bρ_B)/(a + b)
    double measured_k = 296; ///< absolute temperature at which E was read
    double mix_s = 0;
    double today_k = 296;  ///< of shop and parts today
    double pot_life_s = 0; ///< today; a cup in use: no later than its foam starts
    double rise_s = 0;     ///< today; a cup in use: its full rise
    double demold_min = 0; ///< today, never below the label
    std::optional<CupTimes> cup;
    double label_expansion = 0; ///< E by the label, cup or not
    bool operator==(const Profile&) const = default;
};

/// How much longer everything takes at `temperature_c` than at `reference_c`: 2^((reference − t)/10), the
/// pessimistic rule of thumb (common practice; published activation energies of 27 … 48 kJ/mol give less),
/// or, where the foam's activation energy is known, Arrhenius' exp[(Ea/R)(1/T − 1/T_reference)].
double time_factor(double temperature_c, double reference_c, std::optional<double> activation_kj_mol);

/// How much warmer shop and parts are today than where E was read; 0 where they are colder.
double warmer_k(const Profile& profile);

/// Today's profile, by the label or by the cups in use (their mean). Of several cups u is at least half of
/// what they lie apart (our guess). Gas that is warmer than where E was read pushes harder (warmer_k()),
/// colder gas fills less (E_low − 1 in proportion to the absolute temperature, ideal gas); E itself stays.
/// Refused
/// ("cup-unusable"): one in use did not rise, times out of order.
Expected<Profile> profile_of(const ProfileIn& in);

} // namespace drawercast::casting
