// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read_outline.h"
#include "job/read_parts.h"
#include "job/words.h"

#include <algorithm>

namespace drawercast::job {

namespace {

constexpr std::size_t most_levels = 4;
constexpr std::size_t most_cylinders = 20;
constexpr std::size_t most_pockets = 5000;
constexpr std::size_t most_notches = 20;
constexpr std::size_t most_obstructions = 100;
constexpr std::size_t most_points = 1000;

std::optional<Cylinder> read_cylinder(Reading& reading, JsonValue at) {
    if (at.kind() != JsonKind::array || at.size() != 2) {
        reading.report("lying", at, phrase("is no cylinder"), phrase("Write [length, diameter] in mm"));
        return std::nullopt;
    }
    std::vector<double> sizes;
    at.each_item([&](JsonValue item) {
        const auto size = read_length(reading, item,
                                      sizes.empty() ? "/objects/*/levels/*/lying/*/length_mm"
                                                    : "/objects/*/levels/*/lying/*/diameter_mm");
        if (size) sizes.push_back(*size);
    });
    if (sizes.size() != 2) return std::nullopt;
    return Cylinder{sizes[0], sizes[1]};
}

Lying read_lying(Fields& fields) {
    Lying lying;
    Reading& reading = fields.reading();
    fields.list("lying", most_cylinders, [&](JsonValue item) {
        if (const auto cylinder = read_cylinder(reading, item)) lying.cylinders.push_back(*cylinder);
    });
    fields.length("axis_mm", lying.axis_mm);
    if (fields.object().find("lying")->size() == 0)
        reading.report("lying", fields.object(), phrase("has no cylinder"),
                       phrase("Write at least one [length, diameter]"));
    const bool above = std::any_of(lying.cylinders.begin(), lying.cylinders.end(),
                                   [&](const Cylinder& c) { return !(lying.axis_mm > -c.diameter_mm / 2); });
    if (above)
        reading.report("lying", fields.object(), phrase("a cylinder lies wholly above the insert's face"),
                       phrase("The axis lies more than its radius above the face: lower it"));
    return lying;
}

Sunk read_sunk(Fields& fields) {
    Sunk sunk;
    read_outline(fields, "outline", sunk.outline);
    fields.require("depth_mm");
    fields.length("depth_mm", sunk.depth_mm);
    return sunk;
}

Through read_through(Fields& fields) {
    Through through;
    read_outline(fields, "outline", through.outline);
    fields.refuse("depth_mm", phrase("a level that goes through has no depth of its own"));
    return through;
}

Level read_level(Reading& reading, JsonValue at) {
    Level level;
    Fields fields(reading, at, "/objects/*/levels/*");
    bool through = false;
    fields.flag("through", through);
    if (fields.has("lying")) {
        level.form = read_lying(fields);
        for (const char* other : {"outline", "depth_mm", "through"})
            fields.refuse(other, phrase("a lying round has its own form and depth"));
    } else if (through) {
        level.form = read_through(fields);
    } else {
        level.form = read_sunk(fields);
    }
    read_pose(fields, level.pose);
    level.unknown = fields.rest();
    return level;
}

Notch read_notch(Reading& reading, JsonValue at) {
    Notch notch;
    Fields fields(reading, at, "/drawers/*/pockets/*/notches/*");
    read_outline(fields, "outline", notch.outline);
    read_pose(fields, notch.pose);
    fields.require("depth_mm");
    fields.length("depth_mm", notch.depth_mm);
    notch.unknown = fields.rest();
    return notch;
}

Pocket read_pocket(Reading& reading, JsonValue at) {
    Pocket pocket;
    Fields fields(reading, at, "/drawers/*/pockets/*");
    fields.require("object");
    fields.text("object", pocket.object);
    fields.whole("n", pocket.n);
    read_pose(fields, pocket.pose);
    fields.flag("locked", pocket.locked);
    fields.list("notches", most_notches,
                [&](JsonValue item) { pocket.notches.push_back(read_notch(reading, item)); });
    pocket.unknown = fields.rest();
    return pocket;
}

KeptVent read_kept_vent(Reading& reading, JsonValue at) {
    KeptVent vent;
    Fields fields(reading, at, "/drawers/*/vents/keep/*");
    fields.require("at");
    fields.point("at", vent.at);
    fields.length("diameter_mm", vent.diameter_mm);
    vent.unknown = fields.rest();
    return vent;
}

Vents read_vents(Reading& reading, JsonValue at) {
    Vents vents;
    Fields fields(reading, at, "/drawers/*/vents");
    fields.list("keep", most_points,
                [&](JsonValue item) { vents.keep.push_back(read_kept_vent(reading, item)); });
    fields.word("rest", vents.rest_auto, rest_words());
    vents.unknown = fields.rest();
    return vents;
}

Pour read_pour(Reading& reading, JsonValue at) {
    Pour pour;
    Fields fields(reading, at, "/drawers/*/pours/*");
    fields.require("at");
    fields.point("at", pour.at);
    fields.require("ml");
    fields.number("ml", pour.ml);
    pour.unknown = fields.rest();
    return pour;
}

Obstruction read_obstruction(Reading& reading, JsonValue at) {
    Obstruction obstruction;
    Fields fields(reading, at, "/drawers/*/obstructions/*");
    read_outline(fields, "outline", obstruction.outline);
    read_pose(fields, obstruction.pose);
    obstruction.unknown = fields.rest();
    return obstruction;
}

} // namespace

Object read_object(Reading& reading, JsonValue at) {
    Object object;
    Fields fields(reading, at, "/objects/*");
    fields.require("id");
    fields.text("id", object.id);
    fields.text("name", object.name);
    fields.whole("count", object.count);
    fields.number("mass_g", object.mass_g);
    fields.length("height_mm", object.height_mm);
    fields.maybe_length("fit_mm", object.fit_mm);
    fields.maybe_length("fit_end_mm", object.fit_end_mm);
    fields.word("turns", object.turns, turn_words());
    fields.maybe_number("volume_ml", object.volume_ml);
    fields.text("note", object.note);
    fields.require("levels");
    fields.list("levels", most_levels,
                [&](JsonValue item) { object.levels.push_back(read_level(reading, item)); });
    object.unknown = fields.rest();
    if (object.levels.empty() && fields.has("levels"))
        reading.report("missing", at, phrase("the object has no level"),
                       phrase("Give it at least one outline with a depth"));
    return object;
}

Drawer read_drawer(Reading& reading, JsonValue at) {
    Drawer drawer;
    Fields fields(reading, at, "/drawers/*");
    fields.require("id");
    fields.text("id", drawer.id);
    fields.text("name", drawer.name);
    read_outline(fields, "outline", drawer.outline);
    fields.length("clear_height_mm", drawer.clear_height_mm);
    fields.length("insert_mm", drawer.insert_mm);
    fields.maybe_length("gap_mm", drawer.gap_mm);
    fields.number("load_kg", drawer.load_kg);
    fields.list("obstructions", most_obstructions,
                [&](JsonValue item) { drawer.obstructions.push_back(read_obstruction(reading, item)); });
    fields.list("pockets", most_pockets,
                [&](JsonValue item) { drawer.pockets.push_back(read_pocket(reading, item)); });
    fields.maybe_part(
        "vents", [&](JsonValue part) { drawer.vents = read_vents(reading, part); }, "auto");
    fields.list("pours", most_points,
                [&](JsonValue item) { drawer.pours.push_back(read_pour(reading, item)); });
    drawer.unknown = fields.rest();
    return drawer;
}

LeftAsIs read_left_as_is(Reading& reading, JsonValue at) {
    LeftAsIs left;
    Fields fields(reading, at, "/left_as_is/*");
    fields.text("drawer", left.drawer);
    fields.require("code");
    fields.text("code", left.code);
    fields.texts("subjects", left.subjects);
    std::sort(left.subjects.begin(), left.subjects.end());
    fields.number("value", left.value);
    left.unknown = fields.rest();
    return left;
}

} // namespace drawercast::job
