// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/strip.h"

namespace drawercast::arrange {

/// Figures for one room: those that stand already come first.
struct Crowd {
    Room room;
    std::vector<std::vector<TurnedFigure>> figures;
    Stands standing;         ///< of the first ones
    std::vector<bool> fixed; ///< of the same: may not move
};
struct Parted {
    Stands stands;
    std::vector<bool> out; ///< found no room; never one that stood already
};

/// Told each answer that has more in it than the one before.
using TellParted = std::function<void(const Parted&)>;

/// As many as find room. Where all overlaps cannot be parted after some tries, the new figure that is most in
/// the way is left out for good. Stopped or over budget: the best so far.
Parted all_parted(const Crowd& crowd, const Budget& budget, const Watch& watch, const TellParted& tell);

} // namespace drawercast::arrange
