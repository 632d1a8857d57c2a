// SPDX-License-Identifier: GPL-3.0-or-later
#include "buildup/scene.h"

#include "buildup/bodies.h"

#include <algorithm>

namespace drawercast::buildup {

using shape::Box;
using shape::Region;
using shape::Vec;

double lift_of(Part part, double height_mm, double share) {
    const auto tier = [part] {
        switch (part) {
        case Part::base:
        case Part::bearer:
        case Part::block:
        case Part::clay:
            return 0.0;
        case Part::filler:
        case Part::wall:
            return 1.3;
        case Part::foam:
            return 2.6;
        case Part::plate:
            return 3.2;
        case Part::stiffener:
            return 3.7;
        case Part::closure:
            return 4.9;
        }
        return 0.0;
    };
    return tier() * height_mm * share;
}

namespace {

void add(Scene& scene, Part part, Region plan, double bottom, double top, std::string subject = {}) {
    if (!plan.empty() && top > bottom)
        scene.solids.push_back({part, std::move(subject), {{std::move(plan), bottom, top}}});
}

void add_walls(Scene& scene, const SceneIn& in, const Region& away) {
    const Vec size = in.board.box.max;
    const double t = in.wall_mm;
    const bool lapped = in.corner == job::BoxCorner::lapped;
    const Box front{{-t, -t}, {lapped ? size.x + t : size.x, 0}};
    const Box back{{lapped ? -t : 0, size.y}, {size.x + t, size.y + t}};
    const Box right{{size.x, lapped ? 0 : -t}, {size.x + t, size.y}};
    const Box left{{-t, 0}, {0, lapped ? size.y : size.y + t}};
    for (const Box& wall : {front, right, back, left})
        add(scene, Part::wall, less(rectangle(wall), away), 0, in.board.height_mm);
}

/// A closure's head on what it holds down, and its shank through it.
void add_closure(Scene& scene, const SceneIn& in, const mold::ClosureAt& closure) {
    const auto& design = *in.design;
    const bool end = closure.stiffener_end && design.stiffener;
    const job::Closure& kind = end ? design.end_closure : design.closure;
    const double diameter = kind.diameter_mm > 0 ? kind.diameter_mm : 5;
    const double seat = in.board.height_mm + in.plate_mm + (end ? design.stiffener->height_mm : 0);
    double length = kind.length_mm > 0 ? kind.length_mm : in.plate_mm + 2 * diameter;
    constexpr double nut_mm = 15; // a rod is cut off below its nut under the base
    if (kind.kind == job::ClosureKind::rod) length = std::min(length, seat + in.wall_mm + nut_mm);
    Solid solid{Part::closure, {}, {}};
    solid.layers.push_back({disc(closure.at.vec(), diameter / 2), seat - length, seat});
    solid.layers.push_back({disc(closure.at.vec(), diameter), seat, seat + 0.6 * diameter});
    scene.solids.push_back(std::move(solid));
}

void add_bearers(Scene& scene, const SceneIn& in) {
    if (!in.base || !in.base->stiffener) return;
    const job::Stiffener& piece = *in.base->stiffener;
    for (const auto& at : in.base->stiffeners)
        add(scene, Part::bearer, strip(at.from.vec(), at.to.vec(), piece.width_mm),
            -in.wall_mm - piece.height_mm, -in.wall_mm);
}

bool cut_away(const Scene& scene, Vec at, double room) {
    const double x = scene.quarter.right ? at.x - scene.cut_at.x : scene.cut_at.x - at.x;
    const double y = scene.quarter.back ? at.y - scene.cut_at.y : scene.cut_at.y - at.y;
    return x > -room && y > -room;
}

void add_plate(Scene& scene, const SceneIn& in, const Region& away) {
    if (!in.design) return;
    const double seat = in.board.height_mm, top = seat + in.plate_mm;
    Region plate = less(rectangle(scene.outside), away);
    for (const auto& vent : in.vents) plate = less(plate, disc(vent.at, vent.diameter_mm / 2));
    add(scene, Part::plate, std::move(plate), seat, top);
    if (in.design->stiffener)
        for (const auto& at : in.design->stiffeners)
            add(scene, Part::stiffener,
                less(strip(at.from.vec(), at.to.vec(), in.design->stiffener->width_mm), away), top,
                top + in.design->stiffener->height_mm);
    for (const auto& closure : in.design->closures)
        if (!cut_away(scene, closure.at.vec(), 12)) add_closure(scene, in, closure);
}

} // namespace

Scene scene_of(const SceneIn& in, Quarter quarter) {
    Scene scene;
    scene.height_mm = in.board.height_mm;
    scene.outside = in.board.box.grown(in.wall_mm);
    scene.quarter = quarter;
    scene.vents = in.design ? static_cast<int>(in.vents.size()) : 0;
    const Box& box = in.board.box;
    constexpr double share = 0.42; // of the box: enough to look in, with both planes off its middle
    scene.cut_at = {quarter.right ? box.max.x - share * box.width() : box.min.x + share * box.width(),
                    quarter.back ? box.max.y - share * box.height() : box.min.y + share * box.height()};
    const double far = 10 * (box.width() + box.height());
    Box corner;
    corner.add(scene.cut_at);
    corner.add(scene.cut_at + Vec{quarter.right ? far : -far, quarter.back ? far : -far});
    const Region away = rectangle(corner);

    add(scene, Part::base, rectangle(scene.outside), -in.wall_mm, 0);
    add_bearers(scene, in);
    std::vector<Solid> blocks = blocks_of(in.board);
    const Solid clay = clay_of(in.board, in.fillet_mm, blocks);
    scene.solids.push_back(foam_of(in.board, blocks, clay, away));
    if (!clay.layers.empty()) scene.solids.push_back(clay);
    for (Solid& block : blocks) scene.solids.push_back(std::move(block));
    add(scene, Part::filler, less(in.board.fillers.region, away), 0, in.board.height_mm);
    add_walls(scene, in, away);
    add_plate(scene, in, away);
    return scene;
}

} // namespace drawercast::buildup
