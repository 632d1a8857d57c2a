// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/cells.h"

namespace drawercast::air {

/// A flow problem between cells: what flows from one cell to the next is its link times the difference of
/// their values. Links in walls and across the rim are 0.
struct Links {
    Values right; ///< of each cell to its right neighbor
    Values back;  ///< to the one behind it

    explicit Links(std::size_t cells = 0) : right(cells, 0.0), back(cells, 0.0) {}
    /// Of one cell to its four neighbors.
    double sum(std::size_t cell, std::size_t stride) const {
        return right[cell - 1] + right[cell] + back[cell - stride] + back[cell];
    }
};

/// How readily foam moves between cells: M = h/(12(1/h² + 1/w²)) of the smaller gap h and the smaller channel
/// width w of the two, mm³; w is endless over blocks. Of a rectangular duct within +19 % of the exact value.
Links links_of(const Cells& cells, const Values& widths_mm);

} // namespace drawercast::air
