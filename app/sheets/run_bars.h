// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/run_sheet.h"

#include "sheets/chart.h"

namespace drawercast::sheets {

/// The run sheet as staggered bars, a row for each thing to do in the order of its begin: dark while hands
/// are on, open while it is left alone, wide-edged where a delay delays the whole job; a mark stands before
/// what waits for its gates. Closed hours are as narrow bands, so that the shop's days have the width.
Sheet<OnChart> run_bars(const plan::RunSheet& run, const job::Shop& shop, double width_mm);

} // namespace drawercast::sheets
