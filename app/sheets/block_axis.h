// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"
#include "shape/vec.h"

namespace drawercast::sheets {

/// How a block's center marks lie: along its own sides, so that pencil lines on the wood meet them.
struct BlockAxis {
    double turn_deg = 0;  ///< of the long side, −90 < turn ≤ 90; 0 for round blocks
    shape::Vec half_mm{}; ///< half extents along and across it, about the block's center
};
BlockAxis axis_of(const casting::Block& block);

} // namespace drawercast::sheets
