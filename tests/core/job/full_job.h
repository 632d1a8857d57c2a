// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/json_tree.h"
#include "job/write.h"

#include <optional>
#include <string>
#include <string_view>

namespace drawercast::job::testing {

/// A job that the reader takes and in which every key of the file is written at least once, every number that
/// may be left to the program set.
inline Job full_job() {
    Job job;
    job.shop.edit([](Shop& shop) {
        shop.pour_s = 10;
        shop.mixer_ml = 5000;
        shop.bucket_left_ml = 40;
        shop.scale_step_g = 2, shop.opens_h = 7, shop.closes_h = 16, shop.hour_price = 60, shop.margin = 0.25;
        shop.start = "2031-03-04T08:00";
        shop.boards = {Board{}};
        shop.stiffeners = {Stiffener{}};
        shop.closures = {Closure{}};
        shop.closures[0].capacity_n = 900;
        shop.closures[0].seconds = 3;
        shop.closures[0].at_hand = 100;
        shop.tubes = {Tube{}};
        shop.supplies = {SupplyPack{}};
    });
    job.mold.share_walls = true;
    job.as_built = {AsBuilt{"d1", 480, 360, {60, 60.2}, {BuiltBlock{"i1#1", 1, 45, 0.3}}, "measured", {}}};
    Cast cast;
    cast.drawer = "d1", cast.foam = "foam", cast.day = "2031-03-05", cast.note = "dense";
    cast.mixed_g = 1200, cast.cast_g = 1100, cast.trimmed_g = 20, cast.plugs_g = 5;
    cast.plugs_planned_ml = 6, cast.viscosity_pa_s = 200, cast.bow_mm = 1;
    cast.bar_mm = 300, cast.bar_cured_mm = 299, cast.wax_g = 15, cast.clay_g = 30, cast.new_holes = true;
    cast.fits = {{"i1#1", 0.5}};
    job.casts = {cast};
    job.log = {{"d1", "mixing", 1930464000.25, true}};
    job.foam.edit([](Foam& foam) {
        foam.overpack = 0.2;
        foam.activation_kj_mol = 40;
        foam.kits = {Kit{}};
        foam.cup = Cup{};
        foam.cups = {Cup{}};
    });
    job.mold.spacing_mm = 65;
    job.mold.stiffeners = StiffenerChoice{};
    job.minimums = {11, 4, 12, 12, {}};

    const shape::Pose pose{{3, -4}, 30};
    Object object;
    object.id = "i1";
    object.fit_mm = -0.5;
    object.fit_end_mm = 0.5;
    object.turns = Turns::free;
    object.volume_ml = 120;
    object.levels = {{Sunk{shape::Rectangle{60, 40, 5}, 20}, pose, {}},
                     {Through{shape::Polygon{{{{0, 0}, 2}, {{30, 0}, 0}, {{0, 30}, 0}}}}, pose, {}},
                     {Lying{{{50, 20}}, 5}, pose, {}}};
    job.objects = {Shared<Object>(object)};

    Drawer drawer;
    drawer.id = "d1";
    drawer.outline = shape::Rectangle{480, 360, 0};
    drawer.gap_mm = 0.5;
    drawer.obstructions = {{shape::Circle{20}, pose, {}}};
    Pocket pocket;
    pocket.object = "i1";
    pocket.pose = pose;
    pocket.notches = {{shape::Capsule{50, 28}, pose, 10, {}}};
    drawer.pockets = {pocket};
    drawer.vents = Vents{{{{20, 20}, 3}}, true, {}};
    drawer.pours = {{{100, 100}, 500}};
    job.drawers = {Shared<Drawer>(drawer)};
    job.left_as_is = {{"d1", "wall-thin", {"i1#1"}, 9.5, {}}};
    return job;
}

/// The value at a JSON pointer without escapes; "*" is the first item of a list.
inline std::optional<JsonValue> value_at(JsonValue value, std::string_view pointer) {
    while (!pointer.empty()) {
        const auto end = pointer.find('/', 1);
        const std::string word(pointer.substr(1, end == std::string_view::npos ? end : end - 1));
        pointer = end == std::string_view::npos ? std::string_view() : pointer.substr(end);
        std::optional<JsonValue> next = value.find(word);
        if (value.kind() == JsonKind::array) {
            std::size_t left = word == "*" ? 0 : static_cast<std::size_t>(word[0] - '0');
            value.each_item([&](JsonValue item) {
                if (left-- == 0) next = item;
            });
        }
        if (!next) return std::nullopt;
        value = *next;
    }
    return value;
}

/// `text` with the value at `pointer` written as `raw`; empty where there is none.
inline std::string with_value(const std::string& text, std::string_view pointer, const std::string& raw) {
    const auto tree = parse_json(text);
    const auto value = tree ? value_at(tree->root(), pointer) : std::nullopt;
    if (!value) return {};
    return std::string(text).replace(value->begin(), value->raw().size(), raw);
}

/// Where full_job() holds a number of a range: the range's path, or one place of the many it stands for.
inline std::string place_of_range(std::string_view path) {
    if (path == "/outline/size_mm") return "/drawers/0/outline/rect/0";
    if (path == "/outline/corner_mm") return "/objects/0/levels/0/outline/rect/2";
    if (path == "/outline/coordinate_mm") return "/objects/0/levels/1/outline/polygon/1/0";
    if (path == "/outline/sagitta_mm") return "/objects/0/levels/1/outline/polygon/0/2";
    if (path == "/point/coordinate_mm") return "/drawers/0/pockets/0/at/0";
    if (path == "/objects/*/levels/*/lying/*/length_mm") return "/objects/0/levels/2/lying/0/0";
    if (path == "/objects/*/levels/*/lying/*/diameter_mm") return "/objects/0/levels/2/lying/0/1";
    if (path == "/objects/*/levels/*/axis_mm") return "/objects/0/levels/2/axis_mm";
    std::string place(path);
    for (auto star = place.find('*'); star != std::string::npos; star = place.find('*')) place[star] = '0';
    const bool list = place == "/shop/drills_mm" || place == "/as_built/0/walls_mm" ||
                      place.find("/sheet_mm") != std::string::npos ||
                      place.find("/section_mm") != std::string::npos;
    return list ? place + "/0" : place;
}

} // namespace drawercast::job::testing
