// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/plate_parts.h"

#include "base/demand.h"
#include "job/catalog.h"
#include "mold/plate_judge.h"
#include "mold/plate_options.h"
#include "shape/enlargement.h"
#include "stock/box.h"

#include <algorithm>

namespace drawercast::plan {

namespace {

const job::Board* named(const std::vector<job::Board>& boards, const std::optional<std::string>& name) {
    if (!name) return nullptr;
    const auto at = std::find_if(boards.begin(), boards.end(),
                                 [&](const job::Board& board) { return board.name == *name; });
    return at == boards.end() ? nullptr : &*at;
}

/// Whose edge takes a screw: at hand rather than bought.
const job::Board& first_suitable(const job::Shop& shop) {
    const auto& boards = job::boards_of(shop);
    DRAWERCAST_DEMAND(!boards.empty(), "there is always a board");
    const double least_mm = mold::least_edge_mm(job::closures_of(shop));
    const auto thick = [&](const job::Board& board) { return board.thickness_mm >= least_mm; };
    const auto at_hand = std::find_if(boards.begin(), boards.end(), [&](const job::Board& board) {
        return board.at_hand > 0 && thick(board);
    });
    if (at_hand != boards.end()) return *at_hand;
    const auto any = std::find_if(boards.begin(), boards.end(), thick);
    return any == boards.end() ? boards.front() : *any;
}

/// Stiffeners as the maker set them: over the whole plate.
void add_set_stiffeners(const job::Job& job, const DrawerPlan& drawer, PlateParts& parts) {
    const auto& choice = job.mold.stiffeners;
    if (!choice || choice->count == 0 || !drawer.insert) return;
    const auto& all = job::stiffeners_of(*job.shop);
    const auto at = std::find_if(all.begin(), all.end(),
                                 [&](const job::Stiffener& piece) { return piece.name == choice->name; });
    if (at == all.end()) return;
    const double k = shape::enlargement_for(job.foam->shrinkage), walls = 2 * parts.box_board.thickness_mm;
    const double width = drawer.insert->box.width() * k + walls,
                 depth = drawer.insert->box.height() * k + walls;
    const double length =
        choice->along == job::Along::short_side ? std::min(width, depth) : std::max(width, depth);
    parts.stiffener = *at;
    parts.stiffener_lengths_mm.assign(static_cast<std::size_t>(choice->count), length);
}

std::vector<double> lengths_of(const std::vector<mold::StiffenerAt>& pieces) {
    std::vector<double> lengths;
    for (const auto& piece : pieces) lengths.push_back(shape::length(piece.to.vec() - piece.from.vec()));
    return lengths;
}

/// As the plate was worked out.
PlateParts parts_of(const mold::PlateDesign& design) {
    PlateParts parts;
    parts.board = design.board;
    parts.box_board = design.box_board;
    parts.stiffener = design.stiffener;
    parts.stiffener_lengths_mm = lengths_of(design.stiffeners);
    for (const auto& closure : design.closures)
        stock::add_closure(parts.closures, {closure.stiffener_end ? design.end_closure : design.closure, 1});
    return parts;
}

/// Of the base, where it was worked out.
void add_base(const job::Job& job, const DrawerPlan& drawer, PlateParts& parts) {
    if (!drawer.base) return;
    const mold::PlateDesign& design = drawer.base->answer.design;
    parts.bearer = design.stiffener;
    parts.bearer_lengths_mm = lengths_of(design.stiffeners);
    const auto is_screw = [](const job::Closure& one) { return one.kind == job::ClosureKind::screw; };
    const double t = parts.box_board.thickness_mm, k = shape::enlargement_for(job.foam->shrinkage);
    const double width = drawer.insert->box.width() * k, depth = drawer.insert->box.height() * k;
    const bool lapped = job.mold.corner == job::BoxCorner::lapped;
    const auto foot = [&](stock::Side side) -> std::vector<double>& {
        return parts.foot_mm[static_cast<std::size_t>(side)];
    };
    for (const auto& closure : design.closures) {
        if (!is_screw(mold::kind_of(design, closure))) continue; // the plate's own, through both
        const auto at = closure.at;
        if (closure.stiffener_end)
            stock::add_closure(parts.closures, {design.end_closure, 1});
        else if (at.y_mm < 0)
            foot(stock::Side::front).push_back(at.x_mm + t);
        else if (at.y_mm > depth)
            foot(stock::Side::back).push_back(at.x_mm + (lapped ? t : 0));
        else if (at.x_mm > width)
            foot(stock::Side::right).push_back(at.y_mm + (lapped ? 0 : t));
        else
            foot(stock::Side::left).push_back(at.y_mm);
    }
    for (auto& wall : parts.foot_mm) std::sort(wall.begin(), wall.end());
}

} // namespace

PlateParts plate_parts(const job::Job& job, const DrawerPlan& drawer) {
    if (drawer.plate) {
        PlateParts parts = parts_of(drawer.plate->answer.design);
        add_base(job, drawer, parts);
        return parts;
    }
    const auto& boards = job::boards_of(*job.shop);
    PlateParts parts;
    const auto* box = named(boards, job.mold.box_board);
    parts.box_board = box ? *box : first_suitable(*job.shop);
    const auto* plate = named(boards, job.mold.board);
    parts.board = plate ? *plate : parts.box_board;
    add_set_stiffeners(job, drawer, parts);
    return parts;
}

} // namespace drawercast::plan
