// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "casting/answers.h"
#include "layout/insert.h"

#include <memory>
#include <string>
#include <vector>

namespace drawercast::casting {

struct BoardPocket {
    std::shared_ptr<const layout::PlacedPocket> pocket;
    std::string name; ///< as it is to stand on the block
};

struct BoardIn {
    std::shared_ptr<const layout::Insert> insert;
    double shrinkage = 0;
    double fillet_mm = 5;
    double film_mm = 0.1; ///< of the sealer, on all faces that show
    std::vector<BoardPocket> pockets;
};

/// The pattern board with all that stands on it: mirrored, enlarged, sealed sizes. Blocks are numbered row by
/// row from the back, left to right. Each piece of wood that stands on the board is held from below. The set
/// operations' problem ("geometry") where the fillers or the clay line can't be worked out.
Expected<PatternBoard> pattern_board_of(const BoardIn& in);

} // namespace drawercast::casting
