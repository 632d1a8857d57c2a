// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/object.h"
#include "shape/vec.h"

#include <QPainterPath>

#include <vector>

namespace drawercast::app {

/// A level of an object as seen from above, in mm with y up.
struct FromAbove {
    QPainterPath outline;
    double depth_mm = 0;
};

/// A level as seen from the front: x across, z down from the insert's face, mm.
struct FromSide {
    QPainterPath hollow; ///< what it takes out of the foam
    QPainterPath object; ///< the part of the object in and over it
    double depth_mm = 0;
};

/// Both views of an object's levels that make an outline, deepest last, and the boxes around them.
struct ObjectViews {
    std::vector<FromAbove> above;
    std::vector<FromSide> side;
    shape::Box box;
    double greatest_depth_mm = 0;
    double height_mm = 0;

    double proud_mm() const { return height_mm - greatest_depth_mm; } ///< over the face; < 0: sunk below it
};
ObjectViews object_views(const job::Object& object, double insert_mm);

} // namespace drawercast::app
