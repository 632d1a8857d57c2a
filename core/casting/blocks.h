// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "casting/answers.h"
#include "layout/insert.h"
#include "layout/pocket.h"

#include <memory>
#include <string>
#include <vector>

/// The pattern board: what stands on it, mirrored and enlarged for the shrinkage.
namespace drawercast::casting {

inline constexpr double fixing_inset_mm =
    15; ///< of a screw from the block's edge (common practice, no source)
inline constexpr double two_screws_from_mm =
    40; ///< a shorter block gets one screw and a pin (common practice)

struct BoardPocket {
    std::shared_ptr<const layout::PlacedPocket> pocket;
    std::string name; ///< as it stands on the template
};

struct BoardIn {
    std::shared_ptr<const layout::Insert> insert; ///< not null
    double shrinkage = 0;
    double fillet_mm = 5; ///< as made, not enlarged
    double film_mm = 0.1; ///< of sealer, not enlarged
    std::vector<BoardPocket> pockets;
};

/// The blocks at their sealed sizes, numbered in reading order of the board (from the back, left to right),
/// each with its fixing points; fillers where the box is not insert; the clay around all feet. Refused where
/// an area can't be worked out.
Expected<PatternBoard> pattern_board_of(const BoardIn& in);

/// Where a block is screwed from below: two points on a line through its middle along one of its sides, as
/// far apart as they can be while each is `fixing_inset_mm` from the edge (as far as the middle is, where the
/// block is narrower); one in the middle where it is under `two_screws_from_mm` long.
std::vector<shape::Point<shape::InMold>> fixing_points(const shape::Outline<shape::InMold>& foot);

} // namespace drawercast::casting
