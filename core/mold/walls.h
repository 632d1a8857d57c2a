// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_answers.h"

#include <vector>

namespace drawercast::mold {

/// w·D/(q·b⁴) at the middle of a thin plate with four supported edges under even pressure, `ratio` = longer
/// over shorter side b. Source: Lévy's series; Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells,
/// §30.
double held_plate_lift(double ratio);

struct WallsIn {
    double width_mm = 0; ///< of the box, inside
    double depth_mm = 0;
    double height_mm = 0;
    job::Board board;
    PlateLoad load;
    double lift_n = 0;           ///< of the whole plate, at build-for pressure
    double screw_capacity_n = 0; ///< mean ultimate in a wall's edge, of the screws that join the box
    bool operator==(const WallsIn&) const = default;
};

/// Front, right, back, left: each a plate held along its four edges. Half of what pushes it goes to its foot
/// and half to each end; the foot also holds the wall's share of the lift. Foot screws are no further apart
/// than 150 mm, ends have two at least (common practice).
std::vector<WallAnswer> walls_of(const WallsIn& in);

} // namespace drawercast::mold
