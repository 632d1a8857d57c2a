// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"
#include "job/job.h"
#include "shape/vec.h"

namespace drawercast::sheets {

/// How a block's center marks lie: along the object's own axes, so that pencil lines on the wood meet them.
struct BlockAxis {
    double turn_deg = 0;  ///< on the board, −90 < turn ≤ 90
    shape::Vec half_mm{}; ///< half extents along and across it, about the block's center
};
BlockAxis axis_of(const casting::Block& block, const job::Job& job);

/// Whether the axes lie along the board's own.
bool is_square(const BlockAxis& axis);

} // namespace drawercast::sheets
