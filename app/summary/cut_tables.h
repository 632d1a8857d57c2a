// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/stock_stage.h"

#include "sheets/table.h"
#include "summary/page_frame.h"

namespace drawercast::summary {

/// Each drawer's box: inside, outside, walls, joints.
sheets::Table box_table(const Summary& summary, const plan::StockPlan& stock);
/// The bodies of one drawer's blocks: from which boards or tubes, sizes as sawn, what they stand on.
sheets::Table block_stock_table(const Summary& summary, const stock::DrawerStock& drawer);
/// One row for each fence setting.
sheets::Table ticket_table(const Summary& summary, const plan::StockPlan& stock);
/// What is needed, at hand, and to buy.
sheets::Table buy_table(const Summary& summary, const plan::StockPlan& stock);
/// What is used up, by which rate, and where that comes from.
sheets::Table supply_table(const Summary& summary, const plan::StockPlan& stock);
/// Where sealer and release are forgotten, drawer by drawer.
sheets::Table missed_table(const Summary& summary, const plan::StockPlan& stock);

/// Net cavity, foam to pour and pressure as planned, as cut and, where measured, as built.
sheets::Table built_table(const Summary& summary, const plan::Plan& plan);

/// What a set of inserts costs, alone and in runs; no rows until it is worked out.
sheets::Table cost_table(const Summary& summary, const plan::Plan& plan);

/// Every cast of the job: masses, what was left in the buckets, and what its mold went through.
sheets::Table cast_table(const Summary& summary, const plan::Plan& plan);

/// "d1, Instruments"
QString drawer_words(const Summary& summary, const std::string& id);

/// "stack", "tube with discs"
QString words_of(stock::Make make);
QString words_of(stock::Supply supply);

} // namespace drawercast::summary
