// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/plate_figures.h"

#include <algorithm>
#include <string_view>

namespace drawercast::plan {

namespace {

std::string_view word_for(mold::Limit limit) {
    switch (limit) {
    case mold::Limit::bow:
        return "bow";
    case mold::Limit::gap:
        return "gap";
    case mold::Limit::stress:
        return "stress";
    case mold::Limit::stiffener_stress:
        return "stiffener-stress";
    case mold::Limit::closure:
        return "closure";
    case mold::Limit::wall_bow:
        return "wall-bow";
    case mold::Limit::wall_stress:
        return "wall-stress";
    case mold::Limit::screw_length:
        return "screw-length";
    case mold::Limit::closing:
        return "closing";
    }
    return "";
}

void write_stiffeners(JsonText& json, const mold::PlateDesign& design) {
    json.member("stiffeners", static_cast<int>(design.stiffeners.size()));
    if (!design.stiffener) return;
    json.member("stiffener", design.stiffener->name);
    json.key("stiffeners_mm");
    json.begin_array();
    for (const auto& at : design.stiffeners) {
        json.begin_array();
        json.point(at.from.vec());
        json.point(at.to.vec());
        json.end_array();
    }
    json.end_array();
}

void write_closures(JsonText& json, const mold::PlateAnswer& answer) {
    const auto& design = answer.design;
    json.member("closure", design.closure.name);
    if (design.stiffener) json.member("end_closure", design.end_closure.name);
    json.member("closures", static_cast<int>(design.closures.size()));
    json.member("max_closure_n", answer.closure_n[answer.worst]);
    json.member("capacity_n", answer.capacity_n[answer.worst]);
    json.key("closures_mm");
    json.begin_array();
    for (const auto& closure : design.closures) json.point(closure.at.vec());
    json.end_array();
    json.numbers("closure_n", answer.closure_n);
    json.numbers("closure_capacity_n", answer.capacity_n);
    json.key("order");
    json.begin_array();
    for (const int index : design.order) json.integer(index + 1);
    json.end_array();
}

} // namespace

void write_plate(JsonText& json, const mold::PlateAnswer& answer) {
    const auto& design = answer.design;
    json.key("plate");
    json.begin_object();
    json.member("board", design.board.name);
    json.member("box_board", design.box_board.name);
    json.member("thickness_mm", design.board.thickness_mm);
    write_stiffeners(json, design);
    json.member("bow_mm", answer.bow_mm);
    json.member("gap_mm", answer.gap_mm);
    json.member("stress_mpa", answer.stress_mpa);
    if (design.stiffener) json.member("stiffener_stress_mpa", answer.stiffener_stress_mpa);
    write_closures(json, answer);
    json.member("governs", word_for(answer.governs));
    json.member("use", answer.use);
    json.member("price", answer.price);
    if (answer.runner_up) {
        json.key("runner_up");
        json.begin_object();
        json.member("board", answer.runner_up->board);
        json.member("stiffeners", answer.runner_up->stiffeners);
        json.member("closures", answer.runner_up->closures);
        json.member("price", answer.runner_up->price);
        json.end_object();
    }
    json.end_object();
}

void write_base(JsonText& json, const mold::PlateAnswer& answer) {
    const auto& design = answer.design;
    json.key("base");
    json.begin_object();
    json.member("bearers", static_cast<int>(design.stiffeners.size()));
    if (design.stiffener) {
        json.member("bearer", design.stiffener->name);
        json.member("end_closure", design.end_closure.name);
    }
    json.member("bow_mm", answer.bow_mm);
    json.member("gap_mm", answer.gap_mm);
    json.member("stress_mpa", answer.stress_mpa);
    const auto ends = std::count_if(design.closures.begin(), design.closures.end(),
                                    [](const auto& closure) { return closure.stiffener_end; });
    const bool screwed = design.closure.kind == job::ClosureKind::screw; // rods and the like are the plate's
    json.member("foot_screws",
                screwed ? static_cast<int>(design.closures.size()) - static_cast<int>(ends) : 0);
    json.member("max_pull_n", answer.closure_n[answer.worst]);
    json.member("capacity_n", answer.capacity_n[answer.worst]);
    json.member("use", answer.use);
    json.end_object();
}

void write_closing(JsonText& json, const mold::Closing& closing) {
    json.member("plate_on_s", closing.plate_on_s);
    json.member("close_s", closing.close_s);
    json.member("close_margin_s", closing.close_margin_s);
    json.member("in_by_contact", closing.in_by_contact);
}

} // namespace drawercast::plan
