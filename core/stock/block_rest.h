// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/block.h"

#include <vector>

namespace drawercast::stock {

/// How one body meets the others of its block.
struct Meeting {
    Rest rest = Rest::on_board;
    int other = -1;
    double below_mm = 0;       ///< where it stands on another: that one's height
    std::vector<Panel> panels; ///< one for each piece: two where a notch sticks out on both sides
};

/// For each body, as asked.
std::vector<Meeting> meetings_of(const std::vector<BodyIn>& bodies);

} // namespace drawercast::stock
