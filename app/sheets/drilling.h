// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"
#include "job/job.h"
#include "plan/plan.h"
#include "stock/drawer_stock.h"

#include "sheets/sheet.h"
#include "sheets/table.h"

/// The plate and the base, to drill by: true size, lines and letters only.
namespace drawercast::sheets {

/// The plate from above: outline, opening, holes of the closures at the size of their drill with their
/// numbers in driving order, vents, footprints of stiffeners, datum. Needs plan.plate and plan.insert.
Sheet<shape::InMold> plate_drilling(const job::Job& job, const plan::DrawerPlan& plan);

/// Brief: for half a page's width, with no more of what goes in than what it is.
enum class DrillingWords { whole, brief };
/// Every hole of the plate by number: place from the datum, drill through the plate, pilot and its depth in
/// the wall, what goes in.
Table drilling_table(const job::Job& job, const plan::DrawerPlan& plan,
                     DrillingWords words = DrillingWords::whole);

/// The base from above: outline, the walls' inner faces, screws of blocks and walls, bearers under it with
/// the closures at their ends, fillers, datum.
Sheet<shape::InMold> base_drilling(const job::Job& job, const plan::DrawerPlan& plan,
                                   const casting::PatternBoard& board, const stock::DrawerStock& stock);

/// The holes of blocks, fillers, walls and bearers from the datum.
Table base_table(const job::Job& job, const plan::DrawerPlan& plan, const casting::PatternBoard& board,
                 const stock::DrawerStock& stock);

} // namespace drawercast::sheets
