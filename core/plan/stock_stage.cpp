// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/stock_stage.h"

#include "casting/bodies.h"
#include "casting/fillers.h"
#include "casting/fixing.h"
#include "job/catalog.h"
#include "plan/plate_parts.h"
#include "stock/saw.h"

#include <algorithm>

namespace drawercast::plan {

namespace {

/// What holds each piece of a part.
std::vector<stock::Held> held(const casting::Block& block, int part) {
    std::vector<stock::Held> pieces;
    for (const auto& point : block.fixing) {
        if (point.part != part) continue;
        const auto piece = static_cast<std::size_t>(point.piece);
        if (piece >= pieces.size()) pieces.resize(piece + 1, {0, casting::screw_mm, 0});
        if (point.by == casting::Holder::thin_screw) pieces[piece].diameter_mm = casting::thin_screw_mm;
        ++(point.by == casting::Holder::pin ? pieces[piece].pins : pieces[piece].screws);
    }
    if (pieces.empty()) pieces.push_back({0, casting::screw_mm, 0});
    return pieces;
}

/// Blocks of pockets right through stand as high as the walls are sawn.
stock::BlockIn block_in(const job::Job& job, const casting::PatternBoard& board, const casting::Block& block,
                        const layout::PlacedPocket& pocket) {
    const double k = board.enlargement;
    const double walls_mm =
        stock::sawn_mm(board.height_mm, job.shop->saw_step_mm); // sealed alike: no film between
    stock::BlockIn in;
    in.subject = block.subject, in.name = block.name, in.number = block.number;
    for (std::size_t i = 0; i < pocket.form->cuts.size(); ++i) {
        const auto& cut = pocket.form->cuts[i];
        stock::BodyIn body{casting::enlarged(cut.outline.contour, k),
                           cut.through ? walls_mm : block.parts[i].wood_height_mm};
        body.through = cut.through;
        if (cut.round) body.radius_mm = cut.round->radius_mm * k, body.axis_mm = cut.round->axis_mm * k;
        body.notch = cut.kind == layout::Cut<shape::InObject>::Kind::notch;
        body.held = held(block, static_cast<int>(i));
        in.bodies.push_back(std::move(body));
    }
    return in;
}

stock::BlockShop block_shop(const job::Job& job, const PlateParts& plate) {
    return {stock::boards_for_blocks(job::boards_of(*job.shop), plate.box_board, plate.board),
            stock::tubes_of(*job.shop), plate.box_board, job.shop->saw_step_mm, job.mold.film_mm};
}

stock::DrawerStockIn stock_in(const job::Job& job, const DrawerPlan& drawer,
                              const casting::PatternBoard& board) {
    const PlateParts plate = plate_parts(job, drawer);
    stock::DrawerStockIn in;
    in.box = {drawer.id,
              board.box.width(),
              board.box.height(),
              board.height_mm,
              job.mold.corner,
              plate.box_board,
              plate.board,
              plate.stiffener,
              plate.stiffener_lengths_mm,
              plate.bearer,
              plate.bearer_lengths_mm,
              plate.foot_mm,
              job.shop->saw_step_mm};
    in.shop = block_shop(job, plate);
    for (const auto& block : board.blocks) {
        const auto* pocket = find_pocket(drawer, block.subject);
        if (pocket == nullptr) continue;
        in.blocks.push_back(block_in(job, board, block, *pocket));
        in.blocks.back().drawer = drawer.id;
    }
    for (const auto& filler : casting::fillers_of(board))
        in.fillers.push_back({filler.outline, static_cast<int>(filler.screws.size())});
    return in;
}

/// Drawers cast one after the other use the same walls: a wall that an earlier drawer has already in that
/// size is not cut again.
void add_parts(const job::Job& job, const stock::DrawerStock& drawer, std::vector<stock::Part>& parts) {
    std::vector<bool> taken(parts.size(), false);
    for (const stock::Part& part : drawer.parts) {
        bool shared = false;
        for (std::size_t i = 0; i < taken.size() && job.mold.share_walls && part.role == stock::Role::wall;
             ++i) {
            const stock::Part& other = parts[i];
            if (taken[i] || other.role != stock::Role::wall || other.board != part.board ||
                other.length_mm != part.length_mm || other.width_mm != part.width_mm)
                continue;
            taken[i] = shared = true;
            break;
        }
        if (!shared) parts.push_back(part);
    }
}

stock::SuppliesIn supplies_in(const job::Job& job, const Plan& plan, const StockPlan& all) {
    stock::SuppliesIn in;
    in.people = job.shop->people;
    for (const auto& drawer : all.drawers) {
        in.sealed_mm2 += drawer.sealed_mm2;
        in.end_grain_mm2 += drawer.missed.end_grain_mm2;
        in.bead_mm += drawer.bead_mm;
        in.glue_mm2 += drawer.glue_mm2;
        for (const auto& block : drawer.blocks) in.clay_mm += block.feet_mm;
        ++in.pours;
    }
    for (const auto& drawer : plan.drawers) {
        if (drawer.cavity) in.clay_mm3 += drawer.cavity->fillet_mm3;
        if (drawer.dose) in.pigment_ml += drawer.dose->pigment_ml, in.batches += drawer.dose->batches;
    }
    return in;
}

} // namespace

void hold_by_stock(const job::Job& job, const DrawerPlan& drawer, casting::PatternBoard& board) {
    const auto shop = block_shop(job, plate_parts(job, drawer));
    for (auto& block : board.blocks) {
        const auto* pocket = find_pocket(drawer, block.subject);
        if (pocket == nullptr) continue;
        const auto made = stock::block_by_stock(block_in(job, board, block, *pocket), shop);
        for (const stock::Body& body : made.bodies) {
            const auto is_of = [&](const casting::FixingPoint& point) {
                return point.part == body.of && point.piece == body.piece;
            };
            if (body.held.screws == 0)
                for (auto& point : block.fixing)
                    if (is_of(point)) point.by = casting::Holder::pin;
            if (body.held.pins == 0)
                std::erase_if(block.fixing, [&](const auto& point) {
                    return is_of(point) && point.by == casting::Holder::pin;
                });
        }
    }
}

bool is_cut(const StockPlan& stock, const std::string& label) {
    return std::any_of(stock.parts.begin(), stock.parts.end(),
                       [&](const stock::Part& part) { return part.label == label; });
}

std::optional<stock::DrawerStock> drawer_stock(const job::Job& job, const DrawerPlan& drawer) {
    const auto board = pattern_board(job, drawer);
    if (!board) return std::nullopt;
    auto made = stock::drawer_stock_of(stock_in(job, drawer, *board));
    if (drawer.air) made.missed.vent_holes = static_cast<int>(drawer.air->vented.vents.size());
    return made;
}

StockPlan stock_of(const job::Job& job, const Plan& plan) {
    StockPlan all;
    std::vector<stock::ScrewUse> screws, pins;
    std::vector<stock::ClosureUse> closures;
    for (const auto& drawer : plan.drawers) {
        auto made = drawer_stock(job, drawer);
        if (!made) continue;
        add_parts(job, *made, all.parts);
        all.lengths.insert(all.lengths.end(), made->lengths.begin(), made->lengths.end());
        for (const auto& use : made->screws) stock::add_screws(screws, use);
        for (const stock::Wall& wall : made->box.walls) {
            if (is_cut(all, wall.label)) continue;
            for (stock::ScrewUse again : stock::joint_screws_of(made->box, wall)) // out of there, in here
                again.count = -again.count, stock::add_screws(screws, again);
        }
        for (const auto& use : made->pins) stock::add_screws(pins, use);
        for (const auto& use : plate_parts(job, drawer).closures) stock::add_closure(closures, use);
        all.drawers.push_back(std::move(*made));
    }
    const auto& tubes = stock::tubes_of(*job.shop);
    const auto& stiffeners = job::stiffeners_of(*job.shop);
    all.cuts = stock::cut_list_of({all.parts, all.lengths, job::boards_of(*job.shop), stiffeners, tubes,
                                   job.shop->kerf_mm, stock::sheet_trim_mm});
    all.tickets = stock::tickets_of(all.cuts, all.parts);
    all.supplies = stock::supplies_of(supplies_in(job, plan, all));
    stock::add_packages(all.supplies, job.shop->supplies);
    all.buy = stock::buy_list_of(
        {all.cuts, screws, pins, closures, tubes, job::closures_of(*job.shop), job.shop->closures.empty()});
    all.price = stock::price_of(all.buy) + stock::price_of(all.supplies);
    return all;
}

} // namespace drawercast::plan
