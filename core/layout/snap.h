// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/phrase.h"
#include "shape/vec.h"

#include <optional>
#include <utility>
#include <vector>

namespace drawercast::layout {

/// Why something snapped, in order of priority: what the foam needs comes before what looks tidy, the grid
/// last.
enum class SnapReason { edge, wall, equal_walls, centers_in_line, sides_in_line, grid };
Phrase words_of(SnapReason reason); ///< "edge as the shop wants it", "centers in line", …

/// A neighbor as snapping sees it: its box and the wall the shop wants beside it.
struct SnapNeighbor {
    shape::Box box;
    double wall_mm = 0;
    bool operator==(const SnapNeighbor&) const = default;
};

struct SnapIn {
    shape::Box moving; ///< what is moved, where the pointer wants it
    std::vector<SnapNeighbor> neighbors;
    shape::Box insert;
    double edge_mm = 0;   ///< least distance to the insert's edge
    double grid_mm = 0;   ///< 0: no grid
    double radius_mm = 0; ///< how far a target attracts; the caller keeps it the same on screen at any zoom
};

/// What one direction snapped to. The guide runs along the line of the target, between the shapes it joins.
struct SnapAxis {
    double shift_mm = 0;
    SnapReason reason = SnapReason::grid;
    shape::Vec guide_from;
    shape::Vec guide_to;
    /// Of equal walls: each of them, from shape to shape, where what is moved ends up.
    std::vector<std::pair<shape::Vec, shape::Vec>> walls;
};

/// x and y snap apart; a direction without a target in reach is absent.
struct Snap {
    std::optional<SnapAxis> x;
    std::optional<SnapAxis> y;
    shape::Vec shift() const { return {x ? x->shift_mm : 0, y ? y->shift_mm : 0}; }
};

/// The nearest target of the first reason that has one in reach, in each direction; ties go to the lesser
/// shift, then to the shorter guide, then to the neighbor listed first. Snaps the box of what is moved, not
/// the pointer.
Snap snapped(const SnapIn& in);

} // namespace drawercast::layout
