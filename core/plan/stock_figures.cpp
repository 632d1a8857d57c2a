// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/stock_figures.h"

#include "plan/as_built.h"
#include "plan/stock_words.h"

namespace drawercast::plan {

namespace {

void write_box(JsonText& json, const stock::Box& box) {
    json.key("box");
    json.begin_object();
    json.numbers("inside_mm", {box.width_mm, box.depth_mm, box.height_mm});
    json.numbers("outside_mm", {box.outside_width_mm, box.outside_depth_mm, box.outside_height_mm});
    json.key("walls_mm");
    json.begin_array();
    for (const auto& wall : box.walls) json.number(wall.length_mm);
    json.end_array();
    json.member("bead_mm", box.bead_mm);
    json.end_object();
}

void write_body(JsonText& json, const stock::Body& body) {
    json.begin_object();
    json.member("label", body.label);
    json.member("make", word_of(body.make));
    json.numbers("size_mm", {body.panel.length_mm, body.panel.width_mm, body.height_mm});
    json.key("layers");
    json.begin_array();
    for (const auto& layer : body.layers) json.text(layer);
    json.end_array();
    if (body.stack.saw_off_mm > 0) json.member("saw_off_mm", body.stack.saw_off_mm);
    if (body.tube) {
        json.member("tube", body.tube->tube.name);
        json.member("tube_mm", body.tube_mm);
        json.member("wrap_mm", body.tube->wrap_mm);
    }
    if (body.rest != stock::Rest::on_board) json.member("rests", word_of(body.rest));
    if (body.screw_mm) {
        json.member("screws", body.held.screws);
        json.member("screw_diameter_mm", body.held.diameter_mm);
        json.member("screw_mm", *body.screw_mm);
    }
    if (body.pin_mm) json.member("pins", body.held.pins), json.member("pin_mm", *body.pin_mm);
    json.end_object();
}

/// Of all bodies; the length is the first one's, each body says its own.
void write_screws(JsonText& json, const stock::BlockByStock& block) {
    int screws = 0;
    std::optional<double> length;
    for (const auto& body : block.bodies) {
        screws += body.held.screws;
        if (!length) length = body.screw_mm;
    }
    if (length) json.member("screws", screws), json.member("screw_mm", *length);
}

void write_blocks(JsonText& json, const std::vector<stock::BlockByStock>& blocks) {
    json.key("blocks");
    json.begin_array();
    for (const auto& block : blocks) {
        json.begin_object();
        json.member("number", block.number);
        json.member("subject", block.subject);
        write_screws(json, block);
        json.key("bodies");
        json.begin_array();
        for (const auto& body : block.bodies) write_body(json, body);
        json.end_array();
        json.end_object();
    }
    json.end_array();
}

void write_sheets(JsonText& json, const StockPlan& stock) {
    json.key("sheets");
    json.begin_array();
    for (const auto& cut : stock.cuts.boards) {
        json.begin_object();
        json.member("board", cut.board.name);
        json.member("count", static_cast<int>(cut.sheets.size()));
        json.member("least", cut.least);
        json.member("buy", cut.to_buy);
        json.member("price", cut.price);
        json.member("parts", static_cast<int>(cut.pieces.size()));
        const double sheet = cut.board.sheet_length_mm * cut.board.sheet_width_mm;
        if (!cut.sheets.empty())
            json.member("used", cut.used_mm2 / (sheet * static_cast<double>(cut.sheets.size())));
        if (!cut.too_large.empty()) json.member("too_large", static_cast<int>(cut.too_large.size()));
        json.end_object();
    }
    json.end_array();
}

void write_lengths(JsonText& json, const StockPlan& stock) {
    json.key("lengths");
    json.begin_array();
    for (const auto& cut : stock.cuts.bars) {
        json.begin_object();
        json.member("name", cut.stock);
        json.member("count", static_cast<int>(cut.bars.size()));
        json.member("least", cut.least);
        json.member("buy", cut.to_buy);
        json.member("price", cut.price);
        json.key("bars_mm");
        json.begin_array();
        for (const auto& bar : cut.bars) {
            json.begin_array();
            for (const int index : bar) json.number(stock.lengths[static_cast<std::size_t>(index)].length_mm);
            json.end_array();
        }
        json.end_array();
        if (!cut.too_long.empty()) json.member("too_long", static_cast<int>(cut.too_long.size()));
        json.end_object();
    }
    json.end_array();
}

void write_buy(JsonText& json, const StockPlan& stock) {
    json.key("buy");
    json.begin_array();
    for (const auto& line : stock.buy) {
        json.begin_object();
        json.member("goods", word_of(line.goods));
        json.member("name", line.name);
        json.member("needed", line.needed);
        json.member("at_hand", line.at_hand);
        json.member("buy", line.buy);
        json.member("price", line.price);
        json.end_object();
    }
    json.end_array();
    json.member("stock_price", stock.price);
}

void write_supplies(JsonText& json, const StockPlan& stock) {
    json.key("supplies");
    json.begin_array();
    for (const auto& line : stock.supplies) {
        json.begin_object();
        json.member("name", word_of(line.supply));
        json.member("amount", line.amount);
        json.member("unit", line.unit);
        if (line.rate > 0) json.member("rate", line.rate), json.member("rate_unit", line.rate_unit);
        json.member("by", word_of(line.source));
        if (line.packages) {
            json.member("package", line.packages->amount);
            json.member("needed", line.packages->needed);
            json.member("at_hand", line.packages->at_hand);
            json.member("buy", line.packages->buy);
            json.member("price", line.packages->price);
        }
        json.end_object();
    }
    json.end_array();
}

void write_built_figures(JsonText& json, std::string_view key, const BuiltFigures& figures) {
    json.key(key);
    json.begin_object();
    json.member("gross_mm3", figures.cavity.gross_mm3);
    json.amount("blocks_mm3", figures.cavity.blocks_mm3);
    json.member("net_mm3", figures.cavity.net_mm3);
    if (figures.dose) {
        json.member("poured_ml", figures.dose->poured_ml);
        json.member("mixed_ml", figures.dose->mixed_ml);
        json.member("a_g", figures.dose->a_g);
        json.member("b_g", figures.dose->b_g);
    }
    if (figures.pressure) json.member("closed_kpa", figures.pressure->closed_kpa);
    if (figures.pressure) json.member("build_for_kpa", figures.pressure->build_for_kpa);
    if (figures.planned_dose_kpa) json.member("planned_dose_kpa", *figures.planned_dose_kpa);
    json.end_object();
}

void write_missed(JsonText& json, const stock::Missed& missed) {
    json.key("missed");
    json.begin_object();
    json.member("wall_tops_mm", missed.wall_tops_mm);
    json.member("raw_edges_mm", missed.raw_edges_mm);
    json.member("end_grain_mm2", missed.end_grain_mm2);
    json.member("screw_holes", missed.screw_holes);
    if (missed.vent_holes) json.member("vent_holes", *missed.vent_holes);
    json.end_object();
}

} // namespace

void write_drawer_stock(JsonText& json, const stock::DrawerStock& drawer) {
    write_box(json, drawer.box);
    write_blocks(json, drawer.blocks);
    write_missed(json, drawer.missed);
}

void write_built(JsonText& json, const job::Job& job, const DrawerPlan& drawer,
                 const stock::DrawerStock& stock) {
    const auto write = [&](std::string_view key, const job::AsBuilt& built) {
        if (const auto figures = built_figures(job, drawer, built)) write_built_figures(json, key, *figures);
    };
    write("as_cut", as_cut(job, drawer, stock));
    if (const auto* built = last_built(job, drawer.id)) write("as_built", *built);
}

void write_stock_totals(JsonText& json, const StockPlan& stock) {
    write_sheets(json, stock);
    write_lengths(json, stock);
    write_buy(json, stock);
    write_supplies(json, stock);
}

} // namespace drawercast::plan
