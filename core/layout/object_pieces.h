// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/object.h"
#include "shape/contour.h"

#include <optional>
#include <vector>

namespace drawercast::layout {

/// One outline of an object with its depth, for pictures of it; a lying round is one for each cylinder.
struct ObjectPiece {
    shape::Contour contour; ///< placed in the object's plane
    double depth_mm = 0;
    std::optional<double> axis_mm; ///< depth of the axis, of a cylinder seen from its end from the front
};

/// The levels that make an outline, in the object's order. A level right through is `through_mm` deep.
std::vector<ObjectPiece> pieces_of(const job::Object& object, double through_mm);

} // namespace drawercast::layout
