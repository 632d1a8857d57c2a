// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/run_sheet.h"

#include "sheets/chart.h"

namespace drawercast::sheets {

inline constexpr double run_words_mm = 74; ///< what the words left of the bars take on paper

/// The run sheet as staggered bars, a row for each thing to do in the order of its begin: dark while hands
/// are on, open while it is left alone, wide-edged where a delay delays the whole job; a mark stands before
/// what waits for its gates, an open one once all are ticked; what is ticked itself has a tick. Closed hours
/// are as narrow bands, so that the shop's days have the width.
Sheet<OnChart> run_bars(const plan::RunSheet& run, const job::Job& job, double width_mm,
                        double words_mm = run_words_mm);

} // namespace drawercast::sheets
