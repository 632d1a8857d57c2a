// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <vector>

namespace drawercast::casting {

inline constexpr double screw_inside_mm = 15; ///< from the block's sides (common practice)
inline constexpr double one_screw_mm =
    40; ///< blocks shorter than this get one screw, and a pin against turning

/// Where a block is screwed on from below, in its outline's own plane.
struct Fixing {
    std::vector<shape::Vec> screws; ///< two, or one where `pin`
    bool pin = false;
};

/// Two points as far apart along the outline's longer side as `inside_mm` from its boundary allows, less deep
/// where it is slim. One, at its deepest, where the outline is shorter than `short_mm` or two would stand too
/// close.
Fixing fixing_of(const shape::Contour& outline, double inside_mm = screw_inside_mm,
                 double short_mm = one_screw_mm);

} // namespace drawercast::casting
