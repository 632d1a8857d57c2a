// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"

#include "base/demand.h"
#include "job/catalog_text.h"
#include "job/read_parts.h"

namespace drawercast::job {

namespace {

/// A list of parts read by the job reader's own functions; the catalog is ours, so a fault in it is a fault
/// of ours.
template <class Item>
std::vector<Item> parts(std::string_view text, Item (*read)(Reading&, JsonValue)) {
    const auto tree = parse_json(text);
    DRAWERCAST_DEMAND(tree && tree->root().kind() == JsonKind::array, "the built-in catalog is a list");
    Reading reading;
    std::vector<Item> items;
    tree->root().each_item([&](JsonValue item) { items.push_back(read(reading, item)); });
    const Problems problems = reading.take();
    DRAWERCAST_DEMAND(problems.empty(), one_line(problems.front()).c_str());
    return items;
}

} // namespace

const std::vector<Foam>& builtin_foams() {
    static const auto foams = parts(catalog_text::foams(), read_foam);
    return foams;
}

const std::vector<Board>& builtin_boards() {
    static const auto boards = parts(catalog_text::boards(), read_board);
    return boards;
}

const std::vector<Stiffener>& builtin_stiffeners() {
    static const auto stiffeners = parts(catalog_text::stiffeners(), read_stiffener);
    return stiffeners;
}

const std::vector<Closure>& builtin_closures() {
    static const auto closures = parts(catalog_text::closures(), read_closure);
    return closures;
}

const std::vector<Board>& boards_of(const Shop& shop) {
    return shop.boards.empty() ? builtin_boards() : shop.boards;
}
const std::vector<Stiffener>& stiffeners_of(const Shop& shop) {
    return shop.stiffeners.empty() ? builtin_stiffeners() : shop.stiffeners;
}
const std::vector<Closure>& closures_of(const Shop& shop) {
    return shop.closures.empty() ? builtin_closures() : shop.closures;
}

const std::vector<Object>& standard_objects() {
    static const auto objects = parts(catalog_text::standard_objects(), read_object);
    return objects;
}

Job new_job(const DrawerSize& size) {
    Job job;
    job.foam = builtin_foams().at(1);
    Drawer drawer;
    drawer.id = "d1";
    drawer.name = "Drawer 1";
    drawer.outline = shape::Rectangle{size.width_mm, size.depth_mm, 0};
    drawer.clear_height_mm = size.clear_height_mm;
    drawer.insert_mm = size.insert_mm;
    job.drawers.emplace_back(drawer);
    return job;
}

} // namespace drawercast::job
