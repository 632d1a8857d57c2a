// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"
#include "stock/buy.h"
#include "stock/cut_list.h"
#include "stock/drawer_stock.h"
#include "stock/supplies.h"
#include "stock/tickets.h"

#include <optional>
#include <string>
#include <vector>

namespace drawercast::plan {

/// What to cut and buy for all drawers of a job that have a mold.
struct StockPlan {
    std::vector<stock::DrawerStock> drawers;
    std::vector<stock::Part> parts; ///< of all drawers; walls that are shared only once
    std::vector<stock::LengthPart> lengths;
    stock::CutList cuts; ///< by index into parts and lengths
    std::vector<stock::Ticket> tickets;
    std::vector<stock::SupplyLine> supplies;
    std::vector<stock::BuyLine> buy;
    double price = 0; ///< of what is to buy, foam apart
};

/// Whether a part of that label is cut: a wall that an earlier drawer shares is not.
bool is_cut(const StockPlan& stock, const std::string& label);

/// Pieces of wood that turn out too low for a screw are held by pins in its place, or by glue alone.
void hold_by_stock(const job::Job& job, const DrawerPlan& drawer, casting::PatternBoard& board);

/// One drawer's mold from boards, tubes and bars; absent where it has no pattern board.
std::optional<stock::DrawerStock> drawer_stock(const job::Job& job, const DrawerPlan& drawer);

/// All of them together. Slow by the quick answer's measure: sheets are searched.
StockPlan stock_of(const job::Job& job, const Plan& plan);

} // namespace drawercast::plan
