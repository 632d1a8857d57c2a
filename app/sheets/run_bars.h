// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/run_sheet.h"

#include "sheets/chart.h"

namespace drawercast::sheets {

/// What words and rows take, on paper as it is given.
struct RunRoom {
    double words_mm = 74; ///< left of the bars
    double row_mm = 4.6;  ///< from one row to the next
};

/// The run sheet as staggered bars, a row for each thing to do in the order of its begin: dark while hands
/// are on, open while it is left alone, wide-edged where a delay delays the whole job; a mark stands before
/// what waits for its gates, an open one once all are ticked; what is ticked itself has a tick. Closed hours
/// are as narrow bands, so that the shop's days have the width.
Sheet<OnChart> run_bars(const plan::RunSheet& run, const job::Job& job, double width_mm,
                        const RunRoom& room = {});

} // namespace drawercast::sheets
