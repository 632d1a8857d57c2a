// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/vents.h"
#include "casting/answers.h"
#include "job/mold.h"
#include "mold/plate_answers.h"

#include <optional>
#include <string>
#include <vector>

/// What a drawer's mold is put together from, as solids to look at. Mold frame, mm, heights over the base.
namespace drawercast::buildup {

enum class Part { base, block, clay, filler, wall, foam, plate, stiffener, closure, bearer };
inline constexpr int part_count = 10;

/// Material of even plan between two heights.
struct Layer {
    shape::Region plan;
    double bottom_mm = 0;
    double top_mm = 0;
};

/// A body as layers from the bottom up, each one's top at the next one's bottom.
struct Solid {
    Part part = Part::base;
    std::string subject;
    std::vector<Layer> layers;
    bool smooth = false; ///< its layers stand for a curve: no lines between them
};

struct SceneIn {
    casting::PatternBoard board;
    double fillet_mm = 5;
    double wall_mm = 16;  ///< thickness of walls and base
    double plate_mm = 16; ///< thickness of the plate
    job::BoxCorner corner = job::BoxCorner::lapped;
    std::optional<mold::PlateDesign> design; ///< absent until worked out: no plate, stiffeners, closures
    std::optional<mold::PlateDesign> base;   ///< absent until worked out: no bearers under it
    std::vector<air::Vent> vents;            ///< holes in the plate
};

/// Which quarter of walls, foam, fillers, plate and stiffeners is cut away: that toward +x or −x, +y or −y.
struct Quarter {
    bool right = true;
    bool back = false;
    bool operator==(const Quarter&) const = default;
};

struct Scene {
    std::vector<Solid> solids;
    double height_mm = 0; ///< of the walls
    shape::Box outside;   ///< of the box
    shape::Vec cut_at;    ///< the two planes that cut the quarter away meet here
    Quarter quarter;
    int vents = 0;
};

/// Base, bearers, blocks, clay and closures are left whole, as drafting practice leaves what a section would
/// not make clearer; closures in the quarter that is cut away go with it. Clay and lying rounds are layers
/// that follow their curve.
Scene scene_of(const SceneIn& in, Quarter quarter);

/// Where an exploded part stands higher than when closed, mm; `share` 0 is closed, 1 wholly apart.
double lift_of(Part part, double height_mm, double share);

} // namespace drawercast::buildup
