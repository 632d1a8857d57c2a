// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/cup_effect.h"

#include "casting/band.h"
#include "casting/dose.h"
#include "casting/pressure.h"
#include "casting/profile.h"

namespace drawercast::plan {

std::optional<FoamEffect> effect_of(const job::Job& job, const DrawerPlan& drawer, const job::Foam& foam) {
    if (!drawer.cavity) return std::nullopt;
    const auto profile = casting::profile_of({foam, job.shop->temperature_c, job.shop->altitude_m});
    if (!profile) return std::nullopt;
    const auto& cavity = *drawer.cavity;
    const auto dose = casting::dose_of({*profile, foam, job.shop, cavity.net_mm3, cavity.insert_area_mm2});
    if (!dose) return std::nullopt;
    const casting::BandIn mold{
        *profile, dose->poured_ml, cavity.net_mm3, cavity.insert_area_mm2, foam.mold_hotter_k, 0};
    return FoamEffect{profile->expansion, profile->uncertainty, *dose,
                      casting::pressure_of({mold, casting::band_of(mold), job.mold.pressure_factor})};
}

job::Foam by_label(job::Foam foam) {
    if (foam.cup) foam.cup->use = false;
    for (auto& cup : foam.cups) cup.use = false;
    return foam;
}

} // namespace drawercast::plan
