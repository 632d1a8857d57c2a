// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/json_text.h"
#include "plan/stock_stage.h"

namespace drawercast::plan {

/// Box and blocks of one drawer, as "box" and "blocks" of the object being written.
void write_drawer_stock(JsonText& json, const stock::DrawerStock& drawer);

/// The mold as it is cut and, where the job has measured it, as it was built: "as_cut", "as_built".
void write_built(JsonText& json, const job::Job& job, const DrawerPlan& drawer,
                 const stock::DrawerStock& stock);

/// What holds for all drawers, as members of "totals": sheets, lengths, buy and supplies.
void write_stock_totals(JsonText& json, const StockPlan& stock);

} // namespace drawercast::plan
