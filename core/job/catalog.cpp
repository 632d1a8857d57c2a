// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"

#include "base/demand.h"
#include "job/catalog_text.h"
#include "job/read_parts.h"

namespace drawercast::job {

namespace {

/// A list of parts read by the job reader's own functions; the catalog is ours, so a fault in it is a fault
/// of ours.
template <class Item, class Read>
std::vector<Item> read_list(std::string_view text, const char* pattern, Read read) {
    const auto tree = parse_json(text);
    DRAWERCAST_DEMAND(tree && tree->kind == JsonNode::Kind::array, "the built-in catalog is a list");
    Reading reading(text);
    std::vector<Item> items;
    for (const auto& node : tree->items) items.push_back(read(reading, Spot{&node, pattern, pattern}));
    const Problems problems = reading.take();
    DRAWERCAST_DEMAND(problems.empty(), one_line(problems.front()).c_str());
    return items;
}

} // namespace

const std::vector<Foam>& builtin_foams() {
    static const auto foams = read_list<Foam>(catalog_text::foams(), "/foam", read_foam);
    return foams;
}

const std::vector<Board>& builtin_boards() {
    static const auto boards = read_list<Board>(catalog_text::boards(), "/shop/boards/*", read_board);
    return boards;
}

const std::vector<Stiffener>& builtin_stiffeners() {
    static const auto stiffeners =
        read_list<Stiffener>(catalog_text::stiffeners(), "/shop/stiffeners/*", read_stiffener);
    return stiffeners;
}

const std::vector<Closure>& builtin_closures() {
    static const auto closures =
        read_list<Closure>(catalog_text::closures(), "/shop/closures/*", read_closure);
    return closures;
}

const std::vector<Object>& standard_objects() {
    static const auto objects =
        read_list<Object>(catalog_text::standard_objects(), "/objects/*", read_object);
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
