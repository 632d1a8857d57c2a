// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/insert.h"
#include "layout/pocket.h"
#include "shape/frame.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// Where the foam pushes the air to. All in the mold's plane and sizes.
namespace drawercast::air {

/// The round underside of a lying cylinder: how a body's height falls off from its axis.
struct Ridge {
    shape::Vec on_axis;
    shape::Vec along; ///< of length 1
    double radius_mm = 0;
    double axis_mm = 0; ///< height of the axis over the board
    bool operator==(const Ridge&) const = default;
};

/// A block, or one level of it, that stands on the board.
struct Body {
    shape::Contour outline;
    double height_mm = 0;
    bool through = false; ///< up to the plate: a wall to the foam
    std::optional<Ridge> ridge;
    int pocket = 0; ///< which of the floor's subjects
    bool operator==(const Body&) const = default;
};

/// The mold as the foam meets it.
struct Floor {
    double width_mm = 0; ///< inner box, from (0, 0)
    double depth_mm = 0;
    double height_mm = 0;   ///< H
    shape::Region opening;  ///< not under a filler
    double opening_mm2 = 0; ///< its area
    std::vector<Body> bodies;
    std::vector<std::string> subjects; ///< "i1#1"
    bool operator==(const Floor&) const = default;
};

/// Height of `body` over the board at `p`, which it covers.
double height_at(const Body& body, shape::Vec p);

/// The floor of an insert with its pockets, mirrored and enlarged.
Floor floor_of(const layout::Insert& insert, std::span<const layout::PlacedPocket* const> pockets,
               double shrinkage);

} // namespace drawercast::air
