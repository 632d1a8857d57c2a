// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/answer.h"
#include "job/job.h"

#include "sheets/chart.h"

namespace drawercast::sheets {

/// What vents cost, by their number and drill: foam that leaves, against what was mixed for it, and the
/// pressure that is held. A ring stands where the drawer is. Around the line of its drill the band that half
/// and twice the viscosity leave. Empty but for its name where there are no vents.
Sheet<OnChart> squeeze_plot(const job::Job& job, const air::Answer& air, Vec size_mm = {160, 90});

} // namespace drawercast::sheets
