// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include "sheets/table.h"
#include "summary/page_frame.h"

namespace drawercast::summary {

/// What the figures stand on: each value with where it comes from.
sheets::Table assumption_table(const Summary& summary, const plan::Plan& plan);

/// Foam, batches, insert and pressure of every drawer, for those who mix.
sheets::Table foam_table(const Summary& summary, const plan::Plan& plan);

/// "2 × kit 3.8 L, 84.00; 410 mL left over", or why there is none.
std::vector<QString> purchase_lines(const Summary& summary, const plan::Plan& plan);

} // namespace drawercast::summary
