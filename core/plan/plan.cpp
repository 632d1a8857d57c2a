// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/plan.h"

#include "casting/blocks.h"
#include "plan/planner.h"
#include "plan/sentences.h"
#include "plan/stock_stage.h"
#include "stock/saw.h"

#include <algorithm>

namespace drawercast::plan {

namespace {

bool same_pocket(const std::shared_ptr<const layout::PlacedPocket>& a,
                 const std::shared_ptr<const layout::PlacedPocket>& b) {
    return a == b || (a->subject == b->subject && a->object == b->object && a->pose == b->pose &&
                      *a->form == *b->form && a->cuts == b->cuts && a->boxes == b->boxes && a->box == b->box);
}

bool same_insert(const std::shared_ptr<const layout::Insert>& a,
                 const std::shared_ptr<const layout::Insert>& b) {
    if (a == b) return true;
    if (!a || !b) return false;
    return a->area == b->area && a->edges == b->edges && a->box == b->box && a->area_mm2 == b->area_mm2 &&
           a->thickness_mm == b->thickness_mm && a->drawer == b->drawer && a->obstructions == b->obstructions;
}

bool same_air(const std::shared_ptr<const air::Answer>& a, const std::shared_ptr<const air::Answer>& b) {
    return a == b || (a && b && air::same(*a, *b));
}

bool same_plate(const std::shared_ptr<const mold::Plate>& a, const std::shared_ptr<const mold::Plate>& b) {
    return a == b || (a && b && *a == *b);
}

bool same_stock(const std::shared_ptr<const StockPlan>& a, const std::shared_ptr<const StockPlan>& b) {
    return a == b || (a && b && a->parts == b->parts && a->lengths == b->lengths &&
                      a->tickets == b->tickets && a->buy == b->buy && a->price == b->price);
}

bool same_drawer(const DrawerPlan& a, const DrawerPlan& b) {
    return a.id == b.id && same_insert(a.insert, b.insert) &&
           std::equal(a.pockets.begin(), a.pockets.end(), b.pockets.begin(), b.pockets.end(), same_pocket) &&
           a.figures == b.figures && a.cavity == b.cavity && a.dose == b.dose && a.band == b.band &&
           a.pressure == b.pressure && a.times == b.times && a.checks == b.checks && same_air(a.air, b.air) &&
           same_plate(a.plate, b.plate) && same_plate(a.base, b.base);
}

} // namespace

const DrawerPlan* find_drawer(const Plan& plan, const std::string& id) {
    const auto at = std::find_if(plan.drawers.begin(), plan.drawers.end(),
                                 [&](const DrawerPlan& drawer) { return drawer.id == id; });
    return at == plan.drawers.end() ? nullptr : &*at;
}

const layout::PlacedPocket* find_pocket(const DrawerPlan& drawer, const std::string& subject) {
    const auto at = std::find_if(drawer.pockets.begin(), drawer.pockets.end(),
                                 [&](const auto& pocket) { return pocket->subject == subject; });
    return at == drawer.pockets.end() ? nullptr : at->get();
}

const stock::DrawerStock* find_stock(const StockPlan* stock, const std::string& drawer) {
    if (stock == nullptr) return nullptr;
    const auto at = std::find_if(stock->drawers.begin(), stock->drawers.end(),
                                 [&](const stock::DrawerStock& made) { return made.drawer == drawer; });
    return at == stock->drawers.end() ? nullptr : &*at;
}

bool same(const Plan& a, const Plan& b) {
    return std::equal(a.drawers.begin(), a.drawers.end(), b.drawers.begin(), b.drawers.end(), same_drawer) &&
           a.purchase == b.purchase && a.checks == b.checks && a.a_ml == b.a_ml && a.b_ml == b.b_ml &&
           same_stock(a.stock, b.stock);
}

int count_to_mend(const std::vector<layout::Check>& checks) {
    return static_cast<int>(std::count_if(checks.begin(), checks.end(), layout::to_mend));
}

int count_to_mend(const Plan& plan) {
    int count = count_to_mend(plan.checks);
    for (const DrawerPlan& drawer : plan.drawers) count += count_to_mend(drawer.checks);
    return count;
}

bool anything_to_mend(const Plan& plan) { return count_to_mend(plan) > 0; }

Plan compute(const job::Job& job) { return Planner().fast(job); }

std::optional<casting::PatternBoard> pattern_board(const job::Job& job, const DrawerPlan& drawer) {
    if (!drawer.insert) return std::nullopt;
    casting::BoardIn in{drawer.insert, job.foam->shrinkage, job.mold.fillet_mm, job.mold.film_mm, {}};
    for (const auto& pocket : drawer.pockets)
        in.pockets.push_back({pocket, subject_name(pocket->subject, job)});
    auto board = casting::pattern_board_of(in);
    if (!board) return std::nullopt;
    const double walls_mm = stock::sawn_mm(board->height_mm, job.shop->saw_step_mm);
    for (auto& block : board->blocks)
        for (auto& part : block.parts)
            if (part.cut.through) part.wood_height_mm = walls_mm; // the plate rests on both
    hold_by_stock(job, drawer, *board);
    return std::move(*board);
}

std::vector<layout::Feel> feel_of(const job::Job& job, const DrawerPlan& drawer) {
    return layout::feel_of(drawer.pockets, job, drawer.insert.get());
}

} // namespace drawercast::plan
