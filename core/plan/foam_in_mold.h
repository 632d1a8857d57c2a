// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/band.h"
#include "casting/profile.h"
#include "plan/plan.h"

#include <optional>

namespace drawercast::plan {

/// What a foam does at the shop's temperature and altitude.
Expected<casting::Profile> profile_today(const job::Job& job, const job::Shared<job::Foam>& foam);
Expected<casting::Profile> profile_today(const job::Job& job); ///< the job's own

/// Air that a drawer's vents leave in its mold, mL; none while it is not known.
double air_left_ml(const DrawerPlan& drawer);

/// A mold with so much liquid and air in it; `foam`: what `profile` is of.
casting::BandIn mold_with(const casting::Profile& profile, const job::Foam& foam,
                          const casting::Cavity& cavity, double poured_ml, double air_ml);

/// How hard it pushes; absent where the liquid by itself would fill the shallower end of the mold's band,
/// which has no pressure to speak of.
std::optional<casting::Pressure> pressure_in(const job::Job& job, const casting::BandIn& mold);

} // namespace drawercast::plan
