// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_answers.h"

#include <vector>

namespace drawercast::mold {

/// w·D/(q·b⁴) at the middle of a thin plate with four supported edges under even pressure, `ratio` = longer
/// over shorter side b. Source: Lévy's series; Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells,
/// §30.
double held_plate_lift(double ratio);

/// M/(q·b²) there, of the moment that bends it along its shorter side: the greatest there is. Source: as
/// above.
double held_plate_moment(double ratio, double poisson);

struct WallsIn {
    double width_mm = 0; ///< of the box, inside
    double depth_mm = 0;
    double height_mm = 0;
    job::Board board;
    PlateLoad load;
    bool operator==(const WallsIn&) const = default;
};

/// A board held along its four edges, `length` and `width` apart, under the load: bow and stress by the two
/// above.
WallAnswer held_plate(double length, double width, const job::Board& board, const PlateLoad& load);

/// Front, right, back, left: each a plate held along its four edges by its neighbors, base and plate. What
/// pulls at its foot is worked out with the base (base.h); its ends take a triangle of its load each, a
/// quarter of pressure × height², which screws at the corner's usual pitch hold many times over (tributary
/// areas, common practice).
std::vector<WallAnswer> walls_of(const WallsIn& in);

/// Their greatest bow and their greatest stress, be they of two.
WallAnswer worst_wall(const std::vector<WallAnswer>& walls);

} // namespace drawercast::mold
