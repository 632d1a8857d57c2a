// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/drawer_stock.h"

#include "base/number.h"
#include "casting/fixing.h"
#include "stock/saw.h"
#include "stock/screws.h"

#include <algorithm>

namespace drawercast::stock {

namespace {

void add_filler(const DrawerStockIn& in, const FillerIn& asked, DrawerStock& out) {
    Filler filler;
    filler.label = "F" + std::to_string(out.fillers.size() + 1);
    const Panel exact = panel_of(asked.outline);
    filler.panel = {sawn_up_mm(exact.length_mm, in.shop.saw_step_mm),
                    sawn_up_mm(exact.width_mm, in.shop.saw_step_mm)};
    filler.stack = stack_down_to(out.box.height_mm, in.shop.boards); // the plate rests on it
    filler.feet_mm = shape::perimeter(asked.outline);
    filler.screws = asked.screws;
    const std::string& drawer = in.box.drawer;
    for (const std::size_t index : filler.stack.stack.boards) {
        const job::Board& board = in.shop.boards[index];
        filler.layers.push_back(board.name);
        out.parts.push_back({drawer + " " + filler.label + "." + std::to_string(filler.layers.size()), drawer,
                             0, Role::filler, board.name, filler.panel.length_mm, filler.panel.width_mm,
                             board.thickness_mm, Finish::traced});
    }
    filler.screw_mm = screw_length_mm(in.shop.base.thickness_mm, out.box.height_mm, block_grip_mm);
    if (filler.screw_mm && filler.screws > 0) {
        add_screws(out.screws, {joint_screw_mm, *filler.screw_mm, filler.screws});
        out.missed.screw_holes += filler.screws;
    }
    out.bead_mm += filler.feet_mm;
    out.glue_mm2 +=
        (static_cast<double>(filler.layers.size()) - 1) * filler.panel.length_mm * filler.panel.width_mm;
    const double sides = filler.feet_mm * out.box.height_mm;
    out.sealed_mm2 += sides;
    out.missed.end_grain_mm2 += sides;
    out.fillers.push_back(std::move(filler));
}

void add_block(const DrawerStockIn& in, const BlockIn& asked, DrawerStock& out) {
    BlockByStock block = block_by_stock(asked, in.shop);
    out.parts.insert(out.parts.end(), block.parts.begin(), block.parts.end());
    out.lengths.insert(out.lengths.end(), block.tubes.begin(), block.tubes.end());
    for (const Body& body : block.bodies) {
        if (body.screw_mm) add_screws(out.screws, {body.held.diameter_mm, *body.screw_mm, body.held.screws});
        if (body.pin_mm) add_screws(out.pins, {casting::pin_mm, *body.pin_mm, body.held.pins});
        if (body.rest != Rest::on_body) out.missed.screw_holes += body.held.screws + body.held.pins;
    }
    out.bead_mm += block.feet_mm;
    out.glue_mm2 += block.glue_mm2;
    out.sealed_mm2 += block.surface_mm2;
    out.missed.end_grain_mm2 += block.end_grain_mm2;
    out.blocks.push_back(std::move(block));
}

} // namespace

DrawerStock drawer_stock_of(const DrawerStockIn& in) {
    DrawerStock out;
    out.drawer = in.box.drawer;
    out.box = box_of(in.box);
    const Box& box = out.box;
    out.parts = box.parts;
    out.lengths = box.stiffeners;
    out.lengths.insert(out.lengths.end(), box.bearers.begin(), box.bearers.end());
    out.screws = box.screws;
    out.bead_mm = box.bead_mm;
    out.sealed_mm2 = 2 * box.width_mm * box.depth_mm + 2 * (box.width_mm + box.depth_mm) * box.height_mm;
    out.missed.raw_edges_mm = 4 * (box.outside_width_mm + box.outside_depth_mm);
    for (const Wall& wall : box.walls) {
        out.missed.wall_tops_mm += wall.length_mm;
        if (box.foot_screw_mm > 0) out.missed.screw_holes += static_cast<int>(wall.foot_mm.size());
    }
    for (const BlockIn& block : in.blocks) add_block(in, block, out);
    for (const FillerIn& filler : in.fillers) add_filler(in, filler, out);
    return out;
}

} // namespace drawercast::stock
