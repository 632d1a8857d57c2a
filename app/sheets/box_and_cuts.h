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

/// A cut of the job, in the order of stock.cuts.
struct CutPlace {
    std::size_t board = 0;
    std::size_t sheet = 0;
    std::size_t cut = 0;
    bool operator==(const CutPlace&) const = default;
};
/// Where box_and_cuts() has it.
Box place_of_cut(const job::Job& job, const plan::StockPlan& stock, const std::string& drawer,
                 const CutPlace& place);

/// One sheet alone: sheet `index` of board `board`; numbers as add_cut_sheet() has them.
Sheet<OnBench> cut_sheet(const job::Job& job, const plan::StockPlan& stock, std::size_t board,
                         std::size_t index, double numbered_mm);

} // namespace drawercast::sheets
