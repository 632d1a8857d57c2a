// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"
#include "shape/region.h"

#include <vector>

namespace drawercast::casting {

inline constexpr double screw_inside_mm = 15; ///< from the block's sides (common practice)
inline constexpr double one_screw_mm =
    40;                               ///< blocks shorter than this get one screw, and a pin against turning
inline constexpr double screw_mm = 4; ///< diameter (common practice)
inline constexpr double thin_screw_mm = 3;      ///< where the usual one would split a slim piece
inline constexpr double pin_mm = 2;             ///< headless nail
inline constexpr double diameters_inside = 1.5; ///< axis to side, a diameter of wood: less splits (our guess)

/// Where a piece of wood is held from below, in its outline's own plane.
struct Fixing {
    std::vector<shape::Vec> screws; ///< two, or one with a pin; none where it is too slim for any
    double diameter_mm = screw_mm;  ///< of the screws
    std::vector<shape::Vec> pins;   ///< a piece without a screw is glued as well; none: glued alone
};

/// Two points as far apart along the outline's longer side as screw_inside_mm from its boundary allows, less
/// deep where it is slim; one, at its deepest, where the outline is shorter than one_screw_mm or two would
/// stand too close. Screws of the usual diameter where diameters_inside of it are there on each side, else
/// thin ones, else pins. Pieces of a block may have `holes`.
Fixing fixing_of(const shape::Contour& outline, const std::vector<shape::Ring>& holes = {});

} // namespace drawercast::casting
