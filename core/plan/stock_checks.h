// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/stock_stage.h"

namespace drawercast::plan {

/// Narrower pieces are not ripped between fence and blade: they fall off a wider one's free side (common
/// practice).
inline constexpr double least_rip_mm = 20;

/// What must be said of one drawer's parts. stock-short (mend): a part that no sheet or bar gives, value its
/// length, limit what the stock gives. cut-small (note): a block's part too narrow for a fence, the narrowest
/// of each block.
std::vector<layout::Check> stock_checks(const StockPlan& stock, const std::string& drawer);

} // namespace drawercast::plan
