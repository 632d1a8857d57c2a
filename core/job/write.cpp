// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/write.h"

#include "job/json_lines.h"
#include "job/words.h"

namespace drawercast::job {

namespace {

using Width = JsonLines::Width;

template <class Item, class Write>
void list(JsonLines& out, std::string_view key, const std::vector<Item>& items, Write write) {
    out.key(key);
    out.begin_list(Width::wide);
    for (const auto& item : items) write(out, item);
    out.end_list();
}

void sizes(JsonLines& out, std::string_view key, std::initializer_list<double> values) {
    out.key(key);
    out.begin_list(Width::narrow);
    for (const double value : values) out.number(value);
    out.end_list();
}

struct OutlineWriter {
    JsonLines& out;
    void operator()(const shape::Rectangle& r) const {
        sizes(out, "rect", {r.width_mm, r.height_mm, r.corner_mm});
    }
    void operator()(const shape::Circle& c) const { sizes(out, "circle", {c.diameter_mm}); }
    void operator()(const shape::Capsule& c) const { sizes(out, "capsule", {c.length_mm, c.width_mm}); }
    void operator()(const shape::Polygon& polygon) const {
        out.key("polygon");
        out.begin_list(Width::narrow);
        for (const auto& corner : polygon.corners) {
            out.begin_list(Width::narrow);
            out.number(corner.at.x);
            out.number(corner.at.y);
            if (corner.sagitta_mm != 0) out.number(corner.sagitta_mm);
            out.end_list();
        }
        out.end_list();
    }
};

void outline(JsonLines& out, const shape::Given& given) {
    out.key("outline");
    out.begin_object(Width::narrow);
    std::visit(OutlineWriter{out}, given);
    out.end_object();
}

void pose(JsonLines& out, const shape::Pose& pose) {
    out.key("at");
    out.point(pose.at);
    out.member("turn_deg", pose.turn_deg);
}

// ---- shop ----
void board(JsonLines& out, const Board& board) {
    out.begin_object(Width::narrow);
    out.member("name", board.name);
    out.member("thickness_mm", board.thickness_mm);
    out.member("elasticity_mpa", board.elasticity_mpa);
    out.member("poisson", board.poisson);
    out.member("rupture_mpa", board.rupture_mpa);
    out.member("specific_gravity", board.specific_gravity);
    sizes(out, "sheet_mm", {board.sheet_length_mm, board.sheet_width_mm});
    out.member("price", board.price);
    out.member_whole("at_hand", board.at_hand);
    out.rest(board.unknown);
    out.end_object();
}

void stiffener(JsonLines& out, const Stiffener& stiffener) {
    out.begin_object(Width::narrow);
    out.member("name", stiffener.name);
    sizes(out, "section_mm", {stiffener.width_mm, stiffener.height_mm});
    out.member("elasticity_mpa", stiffener.elasticity_mpa);
    out.member("rupture_mpa", stiffener.rupture_mpa);
    out.member("length_mm", stiffener.length_mm);
    out.member("price", stiffener.price);
    out.rest(stiffener.unknown);
    out.end_object();
}

void closure(JsonLines& out, const Closure& closure) {
    out.begin_object(Width::narrow);
    out.member("name", closure.name);
    out.member("kind", word_of(closure.kind, closure_words()));
    out.member("diameter_mm", closure.diameter_mm);
    out.member("length_mm", closure.length_mm);
    out.member("stiffness_n_mm", closure.stiffness_n_mm);
    out.maybe("capacity_n", closure.capacity_n);
    out.maybe("seconds", closure.seconds);
    out.member("price", closure.price);
    out.maybe("at_hand", closure.at_hand);
    out.rest(closure.unknown);
    out.end_object();
}

void tube(JsonLines& out, const Tube& tube) {
    out.begin_object(Width::narrow);
    out.member("name", tube.name);
    out.member("outside_mm", tube.outside_mm);
    out.member("wall_mm", tube.wall_mm);
    out.member("length_mm", tube.length_mm);
    out.member("price", tube.price);
    out.member_whole("at_hand", tube.at_hand);
    out.rest(tube.unknown);
    out.end_object();
}

void supply(JsonLines& out, const SupplyPack& pack) {
    out.begin_object(Width::narrow);
    out.member("supply", word_of(pack.supply, supply_words()));
    out.member("amount", pack.amount);
    out.member("price", pack.price);
    out.member("at_hand", pack.at_hand);
    out.rest(pack.unknown);
    out.end_object();
}

void shop(JsonLines& out, const Shop& shop) {
    out.key("shop");
    out.begin_object(Width::wide);
    out.member("temperature_c", shop.temperature_c);
    out.member("altitude_m", shop.altitude_m);
    out.member_whole("people", shop.people);
    out.member_whole("drivers", shop.drivers);
    out.member("seconds_per_closure", shop.seconds_per_closure);
    out.member("pour_l_s", shop.pour_l_s);
    out.maybe("pour_s", shop.pour_s);
    out.member("set_plate_s", shop.set_plate_s);
    out.member("container_ml", shop.container_ml);
    out.member("stir_room", shop.stir_room);
    out.maybe("mixer_ml", shop.mixer_ml);
    out.maybe("bucket_left_ml", shop.bucket_left_ml);
    const Shop usual; // files of shops that leave these alone stay as they were
    if (shop.scale_step_g != usual.scale_step_g) out.member("scale_step_g", shop.scale_step_g);
    if (shop.opens_h != usual.opens_h) out.member("opens_h", shop.opens_h);
    if (shop.closes_h != usual.closes_h) out.member("closes_h", shop.closes_h);
    if (shop.hour_price != usual.hour_price) out.member("hour_price", shop.hour_price);
    if (shop.margin != usual.margin) out.member("margin", shop.margin);
    out.member("saw_step_mm", shop.saw_step_mm);
    out.member("kerf_mm", shop.kerf_mm);
    out.key("drills_mm");
    out.begin_list(Width::narrow);
    for (const double drill : shop.drills_mm) out.number(drill);
    out.end_list();
    out.maybe("start", shop.start);
    list(out, "boards", shop.boards, board);
    list(out, "stiffeners", shop.stiffeners, stiffener);
    list(out, "closures", shop.closures, closure);
    if (!shop.tubes.empty()) list(out, "tubes", shop.tubes, tube);
    if (!shop.supplies.empty()) list(out, "supplies", shop.supplies, supply);
    out.rest(shop.unknown);
    out.end_object();
}

// ---- foam and mold ----
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

void foam(JsonLines& out, const Foam& foam) {
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
    list(out, "kits", foam.kits, kit);
    out.key("cup");
    if (foam.cup)
        cup(out, *foam.cup);
    else
        out.null();
    if (!foam.cups.empty()) list(out, "cups", foam.cups, cup);
    out.rest(foam.unknown);
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

void mold(JsonLines& out, const Mold& mold) {
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

void minimums(JsonLines& out, const Minimums& minimums) {
    out.key("minimums");
    out.begin_object(Width::narrow);
    out.maybe("wall_mm", minimums.wall_mm);
    out.maybe("wall_ratio", minimums.wall_ratio);
    out.maybe("edge_mm", minimums.edge_mm);
    out.maybe("floor_mm", minimums.floor_mm);
    out.rest(minimums.unknown);
    out.end_object();
}

// ---- objects and drawers ----
struct LevelWriter {
    JsonLines& out;
    void operator()(const Sunk& sunk) const {
        outline(out, sunk.outline);
        out.member("depth_mm", sunk.depth_mm);
    }
    void operator()(const Through& through) const {
        outline(out, through.outline);
        out.member_flag("through", true);
    }
    void operator()(const Lying& lying) const {
        out.key("lying");
        out.begin_list(Width::narrow);
        for (const auto& cylinder : lying.cylinders) {
            out.begin_list(Width::narrow);
            out.number(cylinder.length_mm);
            out.number(cylinder.diameter_mm);
            out.end_list();
        }
        out.end_list();
        out.member("axis_mm", lying.axis_mm);
    }
};

void level(JsonLines& out, const Level& level) {
    out.begin_object(Width::narrow);
    std::visit(LevelWriter{out}, level.form);
    if (level.pose != shape::Pose{}) pose(out, level.pose); // few levels stand off their object's origin
    out.rest(level.unknown);
    out.end_object();
}

void object(JsonLines& out, const Object& object) {
    out.begin_object(Width::wide);
    out.member("id", object.id);
    out.member("name", object.name);
    out.member_whole("count", object.count);
    out.member("mass_g", object.mass_g);
    out.member("height_mm", object.height_mm);
    out.maybe("fit_mm", object.fit_mm);
    out.maybe("fit_end_mm", object.fit_end_mm);
    if (object.turns != Object{}.turns) out.member("turns", word_of(object.turns, turn_words()));
    out.maybe("volume_ml", object.volume_ml);
    out.member("note", object.note);
    list(out, "levels", object.levels, level);
    out.rest(object.unknown);
    out.end_object();
}

void obstruction(JsonLines& out, const Obstruction& obstruction) {
    out.begin_object(Width::narrow);
    outline(out, obstruction.outline);
    pose(out, obstruction.pose);
    out.rest(obstruction.unknown);
    out.end_object();
}

void notch(JsonLines& out, const Notch& notch) {
    out.begin_object(Width::narrow);
    outline(out, notch.outline);
    pose(out, notch.pose);
    out.member("depth_mm", notch.depth_mm);
    out.rest(notch.unknown);
    out.end_object();
}

void pocket(JsonLines& out, const Pocket& pocket_value) {
    out.begin_object(Width::narrow);
    out.member("object", pocket_value.object);
    out.member_whole("n", pocket_value.n);
    pose(out, pocket_value.pose);
    out.member_flag("locked", pocket_value.locked);
    list(out, "notches", pocket_value.notches, notch);
    out.rest(pocket_value.unknown);
    out.end_object();
}

void vents(JsonLines& out, const std::optional<Vents>& vents) {
    out.key("vents");
    if (!vents) return out.text("auto");
    out.begin_object(Width::narrow);
    list(out, "keep", vents->keep, [](JsonLines& to, const KeptVent& vent) {
        to.begin_object(Width::narrow);
        to.key("at");
        to.point(vent.at);
        to.member("diameter_mm", vent.diameter_mm);
        to.rest(vent.unknown);
        to.end_object();
    });
    out.member("rest", word_of(vents->rest_auto, rest_words()));
    out.rest(vents->unknown);
    out.end_object();
}

void pour(JsonLines& out, const Pour& pour) {
    out.begin_object(Width::narrow);
    out.key("at");
    out.point(pour.at);
    out.member("ml", pour.ml);
    out.rest(pour.unknown);
    out.end_object();
}

void drawer(JsonLines& out, const Drawer& drawer) {
    out.begin_object(Width::wide);
    out.member("id", drawer.id);
    out.member("name", drawer.name);
    outline(out, drawer.outline);
    out.member("clear_height_mm", drawer.clear_height_mm);
    out.member("insert_mm", drawer.insert_mm);
    out.maybe("gap_mm", drawer.gap_mm);
    out.member("load_kg", drawer.load_kg);
    list(out, "obstructions", drawer.obstructions, obstruction);
    list(out, "pockets", drawer.pockets, pocket);
    vents(out, drawer.vents);
    list(out, "pours", drawer.pours, pour);
    out.rest(drawer.unknown);
    out.end_object();
}

void left_as_is(JsonLines& out, const LeftAsIs& left) {
    out.begin_object(Width::narrow);
    out.member("drawer", left.drawer);
    out.member("code", left.code);
    out.key("subjects");
    out.begin_list(Width::narrow);
    for (const auto& subject : left.subjects) out.text(subject);
    out.end_list();
    out.member("value", left.value);
    out.rest(left.unknown);
    out.end_object();
}

void built_block(JsonLines& out, const BuiltBlock& block) {
    out.begin_object(Width::narrow);
    out.member("pocket", block.pocket);
    out.member_whole("body", block.body);
    out.maybe("height_mm", block.height_mm);
    out.member("grown_mm", block.grown_mm);
    out.rest(block.unknown);
    out.end_object();
}

void as_built(JsonLines& out, const AsBuilt& built) {
    out.begin_object(Width::wide);
    out.member("drawer", built.drawer);
    out.maybe("width_mm", built.width_mm);
    out.maybe("depth_mm", built.depth_mm);
    out.key("walls_mm");
    out.begin_list(Width::narrow);
    for (const double height : built.walls_mm) out.number(height);
    out.end_list();
    list(out, "blocks", built.blocks, built_block);
    out.member("note", built.note);
    out.rest(built.unknown);
    out.end_object();
}

void cast_fit(JsonLines& out, const CastFit& fit) {
    out.begin_object(Width::narrow);
    out.member("pocket", fit.pocket);
    out.member("wider_mm", fit.wider_mm);
    out.rest(fit.unknown);
    out.end_object();
}

void cast(JsonLines& out, const Cast& cast) {
    out.begin_object(Width::wide);
    out.member("drawer", cast.drawer);
    out.member("foam", cast.foam);
    out.member("day", cast.day);
    out.maybe("mixed_g", cast.mixed_g);
    out.maybe("cast_g", cast.cast_g);
    out.maybe("trimmed_g", cast.trimmed_g);
    out.maybe("plugs_g", cast.plugs_g);
    out.maybe("plugs_planned_ml", cast.plugs_planned_ml);
    out.maybe("viscosity_pa_s", cast.viscosity_pa_s);
    out.member_whole("batches", cast.batches);
    out.maybe("bow_mm", cast.bow_mm);
    out.maybe("bar_mm", cast.bar_mm);
    out.maybe("bar_cured_mm", cast.bar_cured_mm);
    out.maybe("wax_g", cast.wax_g);
    out.maybe("clay_g", cast.clay_g);
    out.member_flag("new_holes", cast.new_holes);
    list(out, "fits", cast.fits, cast_fit);
    out.member("note", cast.note);
    out.rest(cast.unknown);
    out.end_object();
}

void mark(JsonLines& out, const Mark& mark) {
    out.begin_object(Width::narrow);
    out.member("drawer", mark.drawer);
    out.member("step", mark.step);
    out.member("at_s", mark.at_s);
    if (mark.back) out.member_flag("back", mark.back);
    out.rest(mark.unknown);
    out.end_object();
}

} // namespace

std::string write_job(const Job& job) {
    JsonLines out;
    out.begin_object(Width::wide);
    out.member("format", std::string_view("drawercast-job"));
    out.member_whole("version", format_version);
    out.member("title", job.title);
    out.member_whole("revision", job.revision);
    out.member("display_units", word_of(job.display_units, unit_words()));
    out.member("currency", job.currency);
    shop(out, *job.shop);
    out.key("foam");
    foam(out, *job.foam);
    mold(out, job.mold);
    minimums(out, job.minimums);
    list(out, "objects", job.objects, [](JsonLines& to, const auto& item) { object(to, *item); });
    list(out, "drawers", job.drawers, [](JsonLines& to, const auto& item) { drawer(to, *item); });
    list(out, "left_as_is", job.left_as_is, left_as_is);
    list(out, "as_built", job.as_built, as_built);
    list(out, "casts", job.casts, cast);
    list(out, "log", job.log, mark);
    out.rest(job.unknown);
    out.end_object();
    return out.take();
}

} // namespace drawercast::job
