// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"
#include "job/job.h"

#include "air/answer.h"
#include "sheets/sheet.h"

namespace drawercast::sheets {

/// Where air stays: the mold from above, its blocks, the lines at which the foam arrives, air pockets ringed,
/// and the vents with their numbers, from the datum.
Sheet<shape::InMold> air_map(const job::Job& job, const casting::PatternBoard& board, const air::Answer& air);

} // namespace drawercast::sheets
