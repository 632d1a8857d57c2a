// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/cells.h"

#include <vector>

namespace drawercast::air {

/// Liquid put down in a place of its own: it lies level over these cells.
struct Puddle {
    std::vector<std::size_t> cells;
    double share = 0; ///< of all the liquid in the mold
};

/// Liquid in each cell before it rises, mm³: the puddles', and the rest level over all the floor's pieces.
/// All together it is the room over `full_expansion`, in each piece by itself, so that the mold fills just
/// there. `level_mm`: where the rest stands over the board.
struct Liquid {
    Values mm3;
    double level_mm = 0;
};
Liquid liquid_of(const Cells& cells, const Pieces& pieces, double full_expansion,
                 const std::vector<Puddle>& puddles);

} // namespace drawercast::air
