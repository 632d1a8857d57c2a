// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"
#include "shape/region.h"

#include <vector>

/// The wooden bodies a block is put together from.
namespace drawercast::casting {

enum class Rest {
    on_board, ///< stands on the base
    on_body,  ///< stands on another body
    butts,    ///< stands on the base, cut away where another body stands
};

/// An outline at the mold's size; `k`: the enlargement for shrinkage.
shape::Contour enlarged(shape::Contour contour, double k);

/// A body as asked for, in its block's own plane.
struct BodyGiven {
    shape::Contour outline;
    double height_mm = 0; ///< over the board
    bool lying = false;   ///< a lying round: nothing stands on it, nor it on others
};

/// How one body meets the others of its block.
struct BodyMeeting {
    Rest rest = Rest::on_board;
    int other = -1;                 ///< the body it stands on or butts
    double below_mm = 0;            ///< where it stands on another: that one's height
    std::vector<shape::Patch> left; ///< where it butts: what is left of it, a piece each
};

/// For each body, as given: one that lies within a lower one stands on it; those that overlap butt the
/// highest, which is whole.
std::vector<BodyMeeting> meetings_of(const std::vector<BodyGiven>& bodies);

} // namespace drawercast::casting
