// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/read_outline.h"
#include "job/read_parts.h"

namespace drawercast::job {

namespace {

constexpr std::size_t most_levels = 4;
constexpr std::size_t most_cylinders = 20;
constexpr std::size_t most_pockets = 5000;
constexpr std::size_t most_notches = 20;
constexpr std::size_t most_obstructions = 100;
constexpr std::size_t most_points = 1000;

Lying read_lying(Fields& fields) {
    Lying lying;
    fields.list("lying", most_cylinders, [&](const Spot& item) {
        Cylinder cylinder;
        if (item.node->kind != JsonNode::Kind::array || item.node->items.size() != 2) {
            fields.reading().report("lying", item.pointer, item.node->begin, "is no cylinder",
                                    "Write [length, diameter] in mm");
            return;
        }
        const auto length = read_number(fields.reading(), item.at("length_mm", item.node->items[0]));
        const auto diameter = read_number(fields.reading(), item.at("diameter_mm", item.node->items[1]));
        if (length && diameter) lying.cylinders.push_back({*length, *diameter});
    });
    fields.length("axis_mm", lying.axis_mm);
    for (const auto& cylinder : lying.cylinders)
        if (!(lying.axis_mm > -cylinder.diameter_mm / 2))
            fields.reading().report("lying", fields.spot().pointer, fields.spot().node->begin,
                                    "a cylinder lies wholly above the insert's face",
                                    "Make \"axis_mm\" larger than minus its radius");
    if (lying.cylinders.empty())
        fields.reading().report("lying", fields.spot().pointer, fields.spot().node->begin, "has no cylinder",
                                "Write at least one [length, diameter]");
    return lying;
}

Level read_level(Reading& reading, const Spot& spot) {
    Level level;
    Fields fields(reading, spot);
    if (fields.has("lying")) {
        level.form = read_lying(fields);
    } else {
        bool through = false;
        fields.flag("through", through);
        if (through) {
            Through form;
            read_outline(fields, "outline", form.outline);
            level.form = form;
        } else {
            Sunk form;
            read_outline(fields, "outline", form.outline);
            fields.require("depth_mm");
            fields.length("depth_mm", form.depth_mm);
            level.form = form;
        }
    }
    read_pose(fields, level.pose);
    level.unknown = fields.rest();
    return level;
}

Notch read_notch(Reading& reading, const Spot& spot) {
    Notch notch;
    Fields fields(reading, spot);
    read_outline(fields, "outline", notch.outline);
    read_pose(fields, notch.pose);
    fields.require("depth_mm");
    fields.length("depth_mm", notch.depth_mm);
    notch.unknown = fields.rest();
    return notch;
}

Pocket read_pocket(Reading& reading, const Spot& spot) {
    Pocket pocket;
    Fields fields(reading, spot);
    fields.require("object");
    fields.text("object", pocket.object);
    fields.whole("n", pocket.n);
    read_pose(fields, pocket.pose);
    fields.flag("locked", pocket.locked);
    fields.list("notches", most_notches,
                [&](const Spot& item) { pocket.notches.push_back(read_notch(reading, item)); });
    pocket.unknown = fields.rest();
    return pocket;
}

std::optional<Vents> read_vents(Reading& reading, const Spot& spot) {
    if (spot.node->kind == JsonNode::Kind::null ||
        (spot.node->kind == JsonNode::Kind::string && spot.node->text == "auto"))
        return std::nullopt;
    Vents vents;
    Fields fields(reading, spot);
    fields.list("keep", most_points, [&](const Spot& item) {
        KeptVent vent;
        Fields inner(reading, item);
        inner.point("at", vent.at);
        inner.length("diameter_mm", vent.diameter_mm);
        vents.keep.push_back(vent);
    });
    fields.word("rest", vents.rest_auto,
                std::vector<std::pair<std::string_view, bool>>{{"auto", true}, {"none", false}});
    vents.unknown = fields.rest();
    return vents;
}

Obstruction read_obstruction(Reading& reading, const Spot& spot) {
    Obstruction obstruction;
    Fields fields(reading, spot);
    read_outline(fields, "outline", obstruction.outline);
    read_pose(fields, obstruction.pose);
    obstruction.unknown = fields.rest();
    return obstruction;
}

} // namespace

Object read_object(Reading& reading, const Spot& spot) {
    Object object;
    Fields fields(reading, spot);
    fields.require("id");
    fields.text("id", object.id);
    fields.text("name", object.name);
    fields.whole("count", object.count);
    fields.number("mass_g", object.mass_g);
    fields.length("height_mm", object.height_mm);
    fields.maybe_length("fit_mm", object.fit_mm);
    fields.maybe_length("fit_end_mm", object.fit_end_mm);
    fields.maybe_number("volume_ml", object.volume_ml);
    fields.text("note", object.note);
    fields.require("levels");
    fields.list("levels", most_levels,
                [&](const Spot& item) { object.levels.push_back(read_level(reading, item)); });
    object.unknown = fields.rest();
    if (object.levels.empty() && fields.has("levels"))
        reading.report("missing", spot.pointer, spot.node->begin, "the object has no level",
                       "Give it at least one outline with a depth");
    return object;
}

Drawer read_drawer(Reading& reading, const Spot& spot) {
    Drawer drawer;
    Fields fields(reading, spot);
    fields.require("id");
    fields.text("id", drawer.id);
    fields.text("name", drawer.name);
    read_outline(fields, "outline", drawer.outline);
    fields.length("clear_height_mm", drawer.clear_height_mm);
    fields.length("insert_mm", drawer.insert_mm);
    fields.maybe_length("gap_mm", drawer.gap_mm);
    fields.number("load_kg", drawer.load_kg);
    fields.list("obstructions", most_obstructions,
                [&](const Spot& item) { drawer.obstructions.push_back(read_obstruction(reading, item)); });
    fields.list("pockets", most_pockets,
                [&](const Spot& item) { drawer.pockets.push_back(read_pocket(reading, item)); });
    fields.part("vents", [&](const Spot& part) { drawer.vents = read_vents(reading, part); });
    fields.list("pours", most_points, [&](const Spot& item) {
        Pour pour;
        Fields inner(reading, item);
        inner.point("at", pour.at);
        inner.require("ml");
        inner.number("ml", pour.ml);
        drawer.pours.push_back(pour);
    });
    drawer.unknown = fields.rest();
    return drawer;
}

LeftAsIs read_left_as_is(Reading& reading, const Spot& spot) {
    LeftAsIs left;
    Fields fields(reading, spot);
    fields.text("drawer", left.drawer);
    fields.require("code");
    fields.text("code", left.code);
    fields.texts("subjects", left.subjects);
    fields.number("value", left.value);
    left.unknown = fields.rest();
    return left;
}

} // namespace drawercast::job
