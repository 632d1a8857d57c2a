// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/cells.h"

#include <limits>

namespace drawercast::air {

inline constexpr double no_sides = std::numeric_limits<double>::infinity();

/// How wide the open channel is at each cell: the diameter of the largest disc clear of blocks, fillers and
/// walls that covers its center, mm; no_sides over blocks and in walls.
Values widths_of(const Floor& floor, const Cells& cells);

} // namespace drawercast::air
