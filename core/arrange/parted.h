// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/budget.h"
#include "arrange/search.h"

namespace drawercast::arrange {

/// Figures for one room: those that stand already come first.
struct Crowd {
    Room room;
    std::vector<std::vector<TurnedFigure>> figures;
    Stands standing;             ///< of the first ones
    std::vector<bool> fixed;     ///< of the same: may not move
    std::vector<bool> any_angle; ///< of all: may be turned finely between its turns
};
struct Parted {
    Stands stands;
    std::vector<bool> out; ///< found no room; never one that stood already
};

/// Told each answer that has more in it than the one before.
using TellParted = std::function<void(const Parted&)>;

/// As many as find room. Where all overlaps cannot be parted within half of what is left of the budget, the
/// new figure that is most in the way is left out, and so on; at once where the areas alone, each grown by
/// half the least wall, are more than the room has. What was left out is tried again once the others are
/// parted. Stopped or over budget: the best so far.
Parted all_parted(const Crowd& crowd, const Budget& budget, const Watch& watch, const TellParted& tell);

} // namespace drawercast::arrange
