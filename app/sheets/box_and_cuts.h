// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/stock_stage.h"

#include "sheets/bench.h"

#include <cstddef>
#include <string>

namespace drawercast::sheets {

/// Everything to saw: the box of one drawer from above with its joints, then all sheets and bars of the job
/// with the cuts in their order. Parts of other drawers are drawn without a wash. True millimeters.
Sheet<OnBench> box_and_cuts(const job::Job& job, const plan::StockPlan& stock, const std::string& drawer);

/// One sheet alone: sheet `index` of board `board`; numbers at cuts of `numbered_mm` and more; 0: at all.
Sheet<OnBench> cut_sheet(const job::Job& job, const plan::StockPlan& stock, std::size_t board,
                         std::size_t index, double numbered_mm);

} // namespace drawercast::sheets
