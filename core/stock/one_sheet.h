// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/micro.h"

#include <cstdint>
#include <vector>

/// How much value of pieces one sheet gives by cuts from edge to edge.
namespace drawercast::stock {

struct ValuedPiece {
    Micro width = 0;
    Micro height = 0;
    std::int64_t value = 0;
    int limit = 1; ///< at most so many
};

struct OneSheetIn {
    Micro width = 0;
    Micro height = 0;
    Micro kerf = 0;
    bool may_turn = false;
    std::vector<ValuedPiece> pieces;
};

struct OneSheetAnswer {
    std::int64_t value = 0;
    bool proven = true; ///< false: the search ended before every better answer was ruled out
    int steps = 0;      ///< patterns looked at
};

/// At most `limit` of each piece: exact while it takes no more than `most_steps` patterns. Best first: from
/// the pieces up, two patterns are joined side by side or one behind the other; a pattern is bounded by what
/// the rest of the sheet could give without limits. Source: Viswanathan and Bagchi (1993), Best-first search
/// methods for constrained two-dimensional cutting stock problems, Operations Research 41, 768–776.
OneSheetAnswer best_limited(const OneSheetIn& in, int most_steps = 2'000'000);

} // namespace drawercast::stock
