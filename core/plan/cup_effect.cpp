// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/cup_effect.h"

#include "casting/dose.h"
#include "plan/foam_in_mold.h"

namespace drawercast::plan {

std::optional<FoamEffect> effect_of(const job::Job& job, const DrawerPlan& drawer, const job::Foam& foam) {
    if (!drawer.cavity) return std::nullopt;
    const auto profile = profile_today(job, foam);
    if (!profile) return std::nullopt;
    const auto& cavity = *drawer.cavity;
    const auto dose = casting::dose_of({*profile, foam, job.shop, cavity.net_mm3, cavity.insert_area_mm2});
    if (!dose) return std::nullopt;
    const auto mold = mold_with(*profile, foam, cavity, dose->poured_ml, air_left_ml(drawer));
    const auto pressure = pressure_in(job, mold);
    if (!pressure) return std::nullopt;
    return FoamEffect{profile->expansion, profile->uncertainty, *dose, *pressure};
}

job::Foam by_label(job::Foam foam) {
    if (foam.cup) foam.cup->use = false;
    for (auto& cup : foam.cups) cup.use = false;
    return foam;
}

} // namespace drawercast::plan
