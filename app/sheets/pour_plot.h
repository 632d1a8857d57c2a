// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "sheets/chart.h"

namespace drawercast::sheets {

/// The pour second by second, `size_mm` large: rise, pressure expected and to build for, closures needed and
/// in, with what happens when. Where fewer closures are in than needed the need is drawn in red. Empty but
/// for its name while no plate is known. Words stand outside of the area too: rooms say how much.
Sheet<OnChart> pour_plot(const job::Job& job, const plan::DrawerPlan& plan, Vec size_mm = {160, 105});

} // namespace drawercast::sheets
