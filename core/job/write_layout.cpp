// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/words.h"
#include "job/write_parts.h"

namespace drawercast::job {

namespace {

struct LevelWriter {
    JsonLines& out;
    void operator()(const Sunk& sunk) const {
        write_outline(out, sunk.outline);
        out.member("depth_mm", sunk.depth_mm);
    }
    void operator()(const Through& through) const {
        write_outline(out, through.outline);
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
    if (level.pose != shape::Pose{})
        write_pose(out, level.pose); // few levels stand off their object's origin
    out.rest(level.unknown);
    out.end_object();
}

void obstruction(JsonLines& out, const Obstruction& obstruction) {
    out.begin_object(Width::narrow);
    write_outline(out, obstruction.outline);
    write_pose(out, obstruction.pose);
    out.rest(obstruction.unknown);
    out.end_object();
}

void notch(JsonLines& out, const Notch& notch) {
    out.begin_object(Width::narrow);
    write_outline(out, notch.outline);
    write_pose(out, notch.pose);
    out.member("depth_mm", notch.depth_mm);
    out.rest(notch.unknown);
    out.end_object();
}

void pocket(JsonLines& out, const Pocket& pocket_value) {
    out.begin_object(Width::narrow);
    out.member("object", pocket_value.object);
    out.member_whole("n", pocket_value.n);
    write_pose(out, pocket_value.pose);
    out.member_flag("locked", pocket_value.locked);
    write_list(out, "notches", pocket_value.notches, notch);
    out.rest(pocket_value.unknown);
    out.end_object();
}

void vents(JsonLines& out, const std::optional<Vents>& vents) {
    out.key("vents");
    if (!vents) return out.text("auto");
    out.begin_object(Width::narrow);
    write_list(out, "keep", vents->keep, [](JsonLines& to, const KeptVent& vent) {
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

} // namespace

void write_object(JsonLines& out, const Object& object) {
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
    write_list(out, "levels", object.levels, level);
    out.rest(object.unknown);
    out.end_object();
}

void write_drawer(JsonLines& out, const Drawer& drawer) {
    out.begin_object(Width::wide);
    out.member("id", drawer.id);
    out.member("name", drawer.name);
    write_outline(out, drawer.outline);
    out.member("clear_height_mm", drawer.clear_height_mm);
    out.member("insert_mm", drawer.insert_mm);
    out.maybe("gap_mm", drawer.gap_mm);
    out.member("load_kg", drawer.load_kg);
    write_list(out, "obstructions", drawer.obstructions, obstruction);
    write_list(out, "pockets", drawer.pockets, pocket);
    vents(out, drawer.vents);
    write_list(out, "pours", drawer.pours, pour);
    out.rest(drawer.unknown);
    out.end_object();
}

void write_left_as_is(JsonLines& out, const LeftAsIs& left) {
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

} // namespace drawercast::job
