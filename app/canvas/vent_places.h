// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/answer.h"
#include "job/job.h"
#include "plan/plan.h"

#include <optional>

namespace drawercast::app {

/// A vent's place in the drawer and back; both frames finished sizes and mold sizes as everywhere.
shape::Vec vent_in_drawer(const job::Job& job, const plan::DrawerPlan& plan, shape::Vec mold);
shape::Vec vent_in_mold(const job::Job& job, const plan::DrawerPlan& plan, shape::Vec drawer);

/// The chosen vent among those of `air`, whose places are told in the mold's frame: its number, from 0.
std::optional<std::size_t> vent_near(const air::Answer& air, shape::Vec mold, double reach_mm);

} // namespace drawercast::app
