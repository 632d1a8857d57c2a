// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/words.h"
#include "job/write_parts.h"

namespace drawercast::job {

namespace {

void kit(JsonLines& out, const Kit& kit) {
    out.begin_object(Width::narrow);
    out.member("name", kit.name);
    out.member("volume_ml", kit.volume_ml);
    out.member("price", kit.price);
    out.member_whole("at_hand", kit.at_hand);
    out.rest(kit.unknown);
    out.end_object();
}

void cup(JsonLines& out, const Cup& cup) {
    out.begin_object(Width::narrow);
    out.member_flag("use", cup.use);
    out.member("diameter_mm", cup.diameter_mm);
    out.member("liquid_g", cup.liquid_g);
    out.member("risen_mm", cup.risen_mm);
    out.member("start_s", cup.start_s);
    out.member("half_s", cup.half_s);
    out.member("full_s", cup.full_s);
    out.member("parts_c", cup.parts_c);
    out.member("room_c", cup.room_c);
    out.rest(cup.unknown);
    out.end_object();
}

void stiffener_choice(JsonLines& out, const std::optional<StiffenerChoice>& choice) {
    out.key("stiffeners");
    if (!choice) return out.text("auto");
    out.begin_object(Width::narrow);
    out.member_whole("count", choice->count);
    out.member("name", choice->name);
    out.member("along", word_of(choice->along, along_words()));
    out.member_flag("glued", choice->glued);
    out.rest(choice->unknown);
    out.end_object();
}

} // namespace

void write_foam(JsonLines& out, const Foam& foam) {
    out.begin_object(Width::wide);
    out.member("name", foam.name);
    out.member("expansion", foam.expansion);
    out.member("reference_c", foam.reference_c);
    out.member("ratio_a", foam.ratio_a);
    out.member("ratio_b", foam.ratio_b);
    out.member("density_a_g_ml", foam.density_a_g_ml);
    out.member("density_b_g_ml", foam.density_b_g_ml);
    out.maybe("overpack", foam.overpack, "auto");
    out.member("mix_s", foam.mix_s);
    out.member("pot_life_s", foam.pot_life_s);
    out.member("rise_s", foam.rise_s);
    out.member("demold_min", foam.demold_min);
    out.member("shrinkage", foam.shrinkage);
    out.member("pigment_of_b", foam.pigment_of_b);
    out.member("stress25_kpa", foam.stress25_kpa);
    out.member("stress40_kpa", foam.stress40_kpa);
    out.member("viscosity_pa_s", foam.viscosity_pa_s);
    out.maybe("activation_kj_mol", foam.activation_kj_mol);
    out.member("mold_hotter_k", foam.mold_hotter_k);
    out.member("firmness", word_of(foam.firmness, firmness_words()));
    out.member_flag("crush", foam.crush);
    write_list(out, "kits", foam.kits, kit);
    out.key("cup");
    if (foam.cup)
        cup(out, *foam.cup);
    else
        out.null();
    if (!foam.cups.empty()) write_list(out, "cups", foam.cups, cup);
    out.rest(foam.unknown);
    out.end_object();
}

void write_mold(JsonLines& out, const Mold& mold) {
    out.key("mold");
    out.begin_object(Width::wide);
    out.member("fillet_mm", mold.fillet_mm);
    out.member("film_mm", mold.film_mm);
    out.member("corner", word_of(mold.corner, corner_words()));
    out.member_flag("gasket", mold.gasket);
    out.maybe("spacing_mm", mold.spacing_mm, "auto");
    out.maybe("board", mold.board, "auto");
    out.maybe("box_board", mold.box_board, "auto");
    out.maybe("closure", mold.closure, "auto");
    stiffener_choice(out, mold.stiffeners);
    out.member("vent_spacing_mm", mold.vent_spacing_mm);
    out.member("pressure_factor", mold.pressure_factor);
    if (mold.share_walls) out.member_flag("share_walls", mold.share_walls);
    out.rest(mold.unknown);
    out.end_object();
}

void write_minimums(JsonLines& out, const Minimums& minimums) {
    out.key("minimums");
    out.begin_object(Width::narrow);
    out.maybe("wall_mm", minimums.wall_mm);
    out.maybe("wall_ratio", minimums.wall_ratio);
    out.maybe("edge_mm", minimums.edge_mm);
    out.maybe("floor_mm", minimums.floor_mm);
    out.rest(minimums.unknown);
    out.end_object();
}

} // namespace drawercast::job
