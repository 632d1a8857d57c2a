// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/micro.h"

#include <vector>

/// Bars of one length, cut into pieces.
namespace drawercast::stock {

struct LengthsIn {
    Micro bar = 0;
    Micro kerf = 0;
    std::vector<Micro> pieces; ///< each no longer than a bar
};

struct LengthsAnswer {
    std::vector<std::vector<int>> bars; ///< indices of pieces, longest first
    int least = 0;                      ///< no fewer bars are possible
    bool proven = true;                 ///< bars.size() == least
    int steps = 0;                      ///< bars looked at
};

/// The fewest bars: exact while it takes no more than `most_steps`. Best fit decreasing, then a lower bound,
/// then whole bars at a time, longest piece first, until every better answer is ruled out. Sources: Martello
/// and Toth (1990), Lower bounds and reduction procedures for the bin packing problem, Discrete Applied
/// Mathematics 28, 59–70 (bound L2); Korf (2003), An improved algorithm for optimal bin packing, IJCAI-03
/// (bin completion).
LengthsAnswer fewest_bars(const LengthsIn& in, int most_steps = 200'000);

/// Bound L2 of Martello and Toth for grown pieces and bar, pieces in any order.
int least_bars(Micro bar, std::vector<Micro> pieces);

} // namespace drawercast::stock
