// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/cells.h"
#include "air/liquid.h"

#include <vector>

namespace drawercast::air {

inline constexpr double neck_share =
    0.6; ///< of the lesser width on both sides: narrower is a neck (our guess)

/// The open board cut at its necks.
struct Channels {
    struct Channel {
        double width_mm = 0; ///< widest
        double area_mm2 = 0;
        shape::Vec middle; ///< in the channel's widest part, nearest to its centroid
        int board = 0;     ///< open board that hangs together, from 0: its own number
    };
    std::vector<int> channel; ///< of each cell, from 0; −1 off the open board
    std::vector<Channel> all; ///< in order of their first cell
    int boards = 0;           ///< pieces of open board, cut off from each other by blocks
};
Channels channels_of(const Cells& cells, const Values& widths_mm);

/// Whose foam fills each cell: its own channel's on the open board; over a block that of the channel reached
/// by climbing W in the full mold; −1 in walls.
std::vector<int> fed_by(const Cells& cells, const Channels& channels, const Values& push_when_full);

/// Channels that feed less than `least_mm3` become part of the neighbor they share most of their border with,
/// the smallest first: nobody pours a spoonful. `fed_by` as above, renumbered with them. A board that has
/// only one channel keeps it.
void join_small(double least_mm3, const Cells& cells, const Values& widths_mm, Channels& channels,
                std::vector<int>& fed_by);

/// A pour of `share` of the liquid at `at`: over the channel that holds it, or over the level of a block that
/// does.
Puddle puddle_at(shape::Vec at, double share, const Floor& floor, const Cells& cells,
                 const Channels& channels);

} // namespace drawercast::air
