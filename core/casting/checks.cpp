// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/checks.h"

#include "base/units.h"
#include "casting/form_casting.h"

#include <algorithm>
#include <cmath>

namespace drawercast::casting {
namespace {

constexpr double dunked_share = 1.02; ///< of what is outlined
constexpr double dunked_wrongly_share = 1.5;
constexpr double far_from_label = 1.3;
constexpr double too_far_from_label = 1.7;
constexpr double same_day_k = 3; ///< a cup as warm as that is taken for today's (our guess)

using layout::Check;
using layout::Code;
using layout::Severity;

std::vector<Check> cup_checks(const Profile& profile) {
    std::vector<Check> out;
    const double ratio = profile.expansion_sea_level / profile.label_expansion;
    const double off = std::max(ratio, 1 / ratio);
    if (off > far_from_label)
        out.push_back(check_of(Code::cup_far, off > too_far_from_label ? Severity::mend : Severity::look,
                               profile.expansion_sea_level, profile.label_expansion));
    if (std::abs(profile.today_k - profile.measured_k) > same_day_k)
        out.push_back(check_of(Code::cup_warmth, Severity::look, profile.today_k - units::zero_celsius_k,
                               profile.measured_k - units::zero_celsius_k));
    return out;
}

} // namespace

std::vector<Check> foam_checks(const Profile& profile) {
    if (profile.by_cup) return cup_checks(profile);
    return {check_of(Code::no_cup, Severity::note, 0, 0)};
}

std::vector<Check> dose_checks(const DoseChecksIn& in) {
    const Profile& foam = in.mold.profile;
    std::vector<Check> out;
    if (in.band.low.fill < flow_index)
        out.push_back(check_of(Code::short_if_low, Severity::look, in.band.low.fill, flow_index));
    if (in.band.high.fill > hard_fill)
        out.push_back(check_of(Code::hard_if_high, Severity::look, in.band.high.fill, hard_fill));
    if (in.dose.batches > in.people)
        out.push_back(check_of(Code::too_many_batches, Severity::mend, in.dose.batches, in.people));
    if (in.times.pour_margin_s < 0 || foam.pot_life_s <= foam.mix_s)
        out.push_back(
            check_of(Code::pour_late, Severity::mend, foam.mix_s + in.dose.pour_s, in.times.pot_life_s));
    if (std::abs(in.altitude_m) > level_altitude_m)
        if (const auto closed_kpa = sea_level_dose(in.mold, in.dose.overpack).closed_kpa)
            out.push_back(check_of(Code::dose_altitude, Severity::note, in.altitude_m, *closed_kpa));
    return out;
}

std::optional<Check> volume_check(const layout::PocketForm& form, double insert_mm, double volume_ml) {
    const double outlined_ml = levels_mm3(form, insert_mm) / 1000;
    if (volume_ml <= dunked_share * outlined_ml) return std::nullopt;
    const bool wrong = volume_ml > dunked_wrongly_share * outlined_ml;
    return check_of(Code::volume_doubted, wrong ? Severity::mend : Severity::look, volume_ml, outlined_ml);
}

Check dose_refused_check(double net_mm3) {
    return check_of(Code::dose_refused, Severity::mend, net_mm3 / 1000, 0);
}

} // namespace drawercast::casting
