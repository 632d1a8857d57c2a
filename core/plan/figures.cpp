// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/figures.h"

#include "plan/cost_figures.h"
#include "plan/json_text.h"
#include "plan/plate_figures.h"
#include "plan/sentences.h"
#include "plan/stock_figures.h"

#include <algorithm>

namespace drawercast::plan {

namespace {

void write_insert(JsonText& json, const InsertFigures& insert) {
    json.key("insert");
    json.begin_object();
    json.member("area_mm2", insert.area_mm2);
    json.member("thickness_mm", insert.thickness_mm);
    json.member("volume_mm3", insert.volume_mm3);
    json.end_object();
}

void write_cavity(JsonText& json, const casting::Cavity& cavity) {
    json.key("cavity");
    json.begin_object();
    json.member("gross_mm3", cavity.gross_mm3);
    json.amount("blocks_mm3", cavity.blocks_mm3);
    json.amount("fillet_mm3", cavity.fillet_mm3);
    json.member("net_mm3", cavity.net_mm3);
    json.member("open_area_mm2", cavity.open_area_mm2);
    json.end_object();
}

void write_foam(JsonText& json, const casting::Dose& dose) {
    json.key("foam");
    json.begin_object();
    json.member("expansion", dose.expansion);
    json.member("by", dose.by_cup ? "cup" : "label");
    json.member("overpack", dose.overpack);
    json.member("free_rise_kg_m3", dose.free_rise_kg_m3);
    json.member("molded_kg_m3", dose.molded_kg_m3);
    json.member("poured_ml", dose.poured_ml);
    json.member("mixed_ml", dose.mixed_ml);
    json.member("a_ml", dose.a_ml);
    json.member("b_ml", dose.b_ml);
    json.member("a_g", dose.a_g);
    json.member("b_g", dose.b_g);
    json.member("pigment_ml", dose.pigment_ml);
    json.member("batches", dose.batches);
    json.member("pour_s", dose.pour_s);
    json.member("insert_g", dose.insert_g);
    json.end_object();
}

void write_band_end(JsonText& json, std::string_view name, const casting::BandEnd& end) {
    json.key(name);
    json.begin_object();
    json.member("expansion", end.expansion);
    json.member("net_mm3", end.net_mm3);
    json.member("fill", end.fill);
    json.end_object();
}

void write_band(JsonText& json, const casting::Band& band) {
    json.key("band");
    json.begin_object();
    write_band_end(json, "low", band.low);
    write_band_end(json, "expected", band.expected);
    write_band_end(json, "high", band.high);
    json.end_object();
}

void write_pressure(JsonText& json, const casting::Pressure& pressure) {
    json.key("pressure");
    json.begin_object();
    json.member("closed_kpa", pressure.closed_kpa);
    json.member("build_for_kpa", pressure.build_for_kpa);
    json.member("low_kpa", pressure.low_kpa);
    json.member("high_kpa", pressure.high_kpa);
    json.member("lift_n", pressure.lift_n);
    json.end_object();
}

void write_times(JsonText& json, const casting::Times& times, const mold::Plate* plate) {
    json.key("time");
    json.begin_object();
    json.member("pot_life_s", times.pot_life_s);
    json.member("rise_s", times.rise_s);
    json.member("demold_min", times.demold_min);
    json.member("liquid_level_mm", times.liquid_level_mm);
    json.member("touch_s", times.touch_s);
    json.member("contact_s", times.contact_s);
    json.member("pour_margin_s", times.pour_margin_s);
    if (plate != nullptr) write_closing(json, plate->closing);
    json.end_object();
}

std::string_view text_of(air::VentFor why) {
    switch (why) {
    case air::VentFor::kept:
        return "kept";
    case air::VentFor::air:
        return "air";
    case air::VentFor::corner:
        return "corner";
    case air::VentFor::wall:
        return "wall";
    }
    return {};
}

std::string_view text_of(air::PourKind kind) {
    switch (kind) {
    case air::PourKind::slot:
        return "slot";
    case air::PourKind::top:
        return "top";
    case air::PourKind::channel:
        return "channel";
    }
    return {};
}

void write_air_pockets(JsonText& json, const air::Answer& answer) {
    json.key("air_pockets");
    json.begin_array();
    const auto& pockets = answer.model->map().pockets;
    for (std::size_t i = 0; i < pockets.size(); ++i) {
        json.begin_object();
        json.key("at_mm"), json.point(pockets[i].at);
        json.member("expansion", pockets[i].expansion);
        json.key("vented"), json.boolean(answer.vented.shares_ml[i] <= air::vented_ml);
        json.member("air_ml", answer.vented.shares_ml[i]);
        json.end_object();
    }
    json.end_array();
}

void write_vents(JsonText& json, const air::Answer& answer) {
    const auto& vents = answer.vented.vents;
    json.key("vents");
    json.begin_object();
    json.member("count", static_cast<double>(vents.size()));
    double widest = 0;
    for (const auto& vent : vents) widest = std::max(widest, vent.diameter_mm);
    if (!vents.empty()) json.member("diameter_mm", widest);
    json.member("squeeze_out_ml", answer.squeeze.out_ml);
    json.member("squeeze_out_limit_ml", answer.squeeze.limit_ml);
    json.member("held_kpa", answer.squeeze.held_kpa);
    json.key("held_unsure"), json.boolean(answer.squeeze.unsure);
    json.member("air_ml", answer.vented.air_ml);
    json.key("positions_mm");
    json.begin_array();
    for (const auto& vent : vents) json.point(vent.at);
    json.end_array();
    json.key("diameters_mm");
    json.begin_array();
    for (const auto& vent : vents) json.number(vent.diameter_mm);
    json.end_array();
    json.key("why");
    json.begin_array();
    for (const auto& vent : vents) json.text(text_of(vent.why));
    json.end_array();
    write_air_pockets(json, answer);
    json.end_object();
}

void write_pour_map(JsonText& json, const air::AirMap& map) {
    json.key("pour_map");
    json.begin_array();
    for (const auto& step : map.pour.steps) {
        json.begin_object();
        json.member("order", step.order);
        json.member("kind", text_of(step.kind));
        json.key("at_mm"), json.point(step.at);
        json.member("ml", step.ml);
        if (step.channel >= 0) json.member("width_mm", step.width_mm);
        json.key("set"), json.boolean(step.set);
        json.end_object();
    }
    json.end_array();
}

void write_slow_floors(JsonText& json, const air::Answer& answer) {
    json.key("floors");
    json.begin_array();
    for (const auto& slow : answer.model->map().slow) {
        json.begin_object();
        json.member("subject", answer.model->in().floor.subjects[static_cast<std::size_t>(slow.pocket)]);
        json.member("phi", slow.phi);
        json.key("at_mm"), json.point(slow.at);
        json.end_object();
    }
    json.end_array();
}

void write_checks(JsonText& json, const job::Job& job, const std::vector<layout::Check>& checks) {
    json.key("checks");
    json.begin_array();
    for (const auto& check : checks) {
        json.begin_object();
        json.member("code", layout::text_of(check.code));
        json.member("severity", layout::text_of(check.severity));
        json.key("subjects");
        json.begin_array();
        for (const auto& subject : check.subjects) json.text(subject);
        json.end_array();
        json.member("value", check.value);
        json.member("limit", check.limit);
        json.member("unit", layout::unit_of(check.code));
        if (check.frame != layout::CheckFrame::none) json.member("frame", layout::text_of(check.frame));
        if (check.at) json.key("at_mm"), json.point(*check.at);
        if (check.to) json.key("to_mm"), json.point(*check.to);
        if (check.left_as_is) json.key("left_as_is"), json.boolean(true);
        json.member("text", english(sentence(check, job)));
        json.end_object();
    }
    json.end_array();
}

void write_feel(JsonText& json, const std::vector<layout::Feel>& feel) {
    json.key("feel");
    json.begin_array();
    for (const auto& pocket : feel) {
        json.begin_object();
        json.member("subject", pocket.subject);
        json.member("lift_out_n", pocket.lift_out_n);
        json.member("weight_n", pocket.weight_n);
        json.key("beyond_curve"), json.boolean(pocket.beyond_curve);
        json.end_object();
    }
    json.end_array();
}

void write_stock(JsonText& json, const job::Job& job, const Plan& plan, const DrawerPlan& drawer) {
    if (!plan.stock) return;
    for (const auto& made : plan.stock->drawers) {
        if (made.drawer != drawer.id) continue;
        write_drawer_stock(json, made);
        write_built(json, job, drawer, made);
    }
}

void write_drawer(JsonText& json, const job::Job& job, const Plan& plan, const DrawerPlan& drawer) {
    json.begin_object();
    json.member("id", drawer.id);
    if (drawer.figures) write_insert(json, *drawer.figures);
    if (drawer.cavity) write_cavity(json, *drawer.cavity);
    if (drawer.dose) write_foam(json, *drawer.dose);
    if (drawer.band) write_band(json, *drawer.band);
    if (drawer.pressure) write_pressure(json, *drawer.pressure);
    if (drawer.times) write_times(json, *drawer.times, drawer.plate.get());
    if (drawer.plate) write_plate(json, drawer.plate->answer);
    if (drawer.base) write_base(json, drawer.base->answer);
    write_stock(json, job, plan, drawer);
    if (drawer.air) {
        write_vents(json, *drawer.air);
        write_pour_map(json, drawer.air->model->map());
        write_slow_floors(json, *drawer.air);
    }
    if (drawer.insert) write_feel(json, feel_of(job, drawer));
    write_checks(json, job, drawer.checks);
    json.end_object();
}

void write_totals(JsonText& json, const job::Job& job, const Plan& plan) {
    json.key("totals");
    json.begin_object();
    bool all_dosed = !plan.drawers.empty();
    for (const auto& drawer : plan.drawers) all_dosed = all_dosed && drawer.dose.has_value();
    if (all_dosed) {
        json.member("a_ml", plan.a_ml);
        json.member("b_ml", plan.b_ml);
    }
    if (plan.purchase) {
        json.key("kits");
        json.begin_array();
        for (const auto& kit : plan.purchase->kits) {
            json.begin_object();
            json.member("name", kit.name);
            json.member("count", kit.count);
            json.end_object();
        }
        json.end_array();
        json.member("kit_price", plan.purchase->price);
    }
    if (plan.stock) write_stock_totals(json, *plan.stock);
    write_cost(json, job, plan);
    write_casts(json, job, plan);
    json.end_object();
}

} // namespace

std::string figures_json(const job::Job& job, const Plan& plan, std::string_view program) {
    JsonText json;
    json.begin_object();
    json.member("format", "drawercast-figures");
    json.member("version", 1);
    json.member("program", program);
    json.key("drawers");
    json.begin_array();
    for (const auto& drawer : plan.drawers) write_drawer(json, job, plan, drawer);
    json.end_array();
    write_totals(json, job, plan);
    write_checks(json, job, plan.checks); // of the job as a whole
    json.end_object();
    return json.take();
}

} // namespace drawercast::plan
