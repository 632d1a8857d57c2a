// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/foam_in_mold.h"

#include "casting/pressure.h"

namespace drawercast::plan {

Expected<casting::Profile> profile_today(const job::Job& job, const job::Shared<job::Foam>& foam) {
    return casting::profile_of({foam, job.shop->temperature_c, job.shop->altitude_m});
}

Expected<casting::Profile> profile_today(const job::Job& job) { return profile_today(job, job.foam); }

double air_left_ml(const DrawerPlan& drawer) { return drawer.air ? drawer.air->vented.air_ml : 0; }

casting::BandIn mold_with(const casting::Profile& profile, const job::Foam& foam,
                          const casting::Cavity& cavity, double poured_ml, double air_ml) {
    return {profile,
            poured_ml,
            cavity.net_mm3,
            cavity.insert_area_mm2,
            foam.mold_hotter_k + casting::warmer_k(profile),
            air_ml};
}

std::optional<casting::Pressure> pressure_in(const job::Job& job, const casting::BandIn& mold) {
    const double least_mm3 = casting::shallowest_mm3(mold.net_mm3, mold.insert_area_mm2);
    if (!(mold.poured_ml > 0) || mold.poured_ml >= least_mm3 / 1000) return std::nullopt;
    return casting::pressure_of({mold, casting::band_of(mold), job.mold.pressure_factor});
}

} // namespace drawercast::plan
