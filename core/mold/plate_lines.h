// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_system.h"
#include "shape/frame.h"

#include <vector>

namespace drawercast::mold {

/// What the plate lies on and what pushes it up. Mold frame, origin at the front-left inner corner.
struct PlateShape {
    double width_mm = 0; ///< of the box, inside
    double depth_mm = 0;
    double height_mm = 0;              ///< of the walls
    double wall_mm = 16;               ///< thickness of the walls: the plate covers their tops
    double wall_elasticity_mpa = 2200; ///< of the walls and fillers
    shape::Region opening;             ///< foam pushes here …
    shape::Region through;             ///< … but not over blocks as high as the walls
    bool operator==(const PlateShape&) const = default;
};

/// How finely the plate is cut: none is coarser than `rim_mm` on the wall tops and `pitch_mm` elsewhere.
struct Fineness {
    double rim_mm = 2;
    double pitch_mm = 16;
    bool operator==(const Fineness&) const = default;
};

/// Lines of a plate over a box, the same from either side: on the wall tops an even number, so that one is
/// their center line; growing wider inward; through the middle and through `through_mm` (inside the box, with
/// the mirror images).
std::vector<double> plate_lines(double inside_mm, double wall_mm, std::vector<double> through_mm,
                                const Fineness& fineness);

/// Per node of a grid: share of its cell (halfway to its neighbors) on which foam pushes, and of that which
/// rests on wall tops and fillers, mm².
struct NodeAreas {
    std::vector<double> pushed_mm2;
    std::vector<double> resting_mm2;
};
NodeAreas node_areas(const PlateGrid& grid, const PlateShape& shape);

/// Area of a region within an upright box, mm²; exact.
double area_within(const shape::Region& region, const shape::Box& box);

} // namespace drawercast::mold
