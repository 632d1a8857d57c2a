// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <string>

namespace drawercast::arrange {

/// What a maker may wish of a layout that fits: as much foam on one side of a pocket as on the other; what is
/// written on objects to be read from the front; what is heavy near the front, where a drawer that is pulled
/// out tips least.
enum class Wish { equal_walls, labels_one_way, heavy_in_front };

/// A layout with one wish carried out as far as nothing is spoiled, and what that costs.
struct Tidied {
    Wish wish = Wish::equal_walls;
    job::Job job;
    int moved = 0; ///< pockets that stand or turn otherwise now
    int left = 0;  ///< labels: unlocked ones that found no room turned; else 0
    double narrowest_before_mm = 0, narrowest_after_mm = 0; ///< of all walls and edges
    double heavy_before_mm = 0, heavy_after_mm = 0;         ///< center of mass, from the insert's front
};

/// Moves, turns or swaps pockets of a drawer that are not locked, one at a time, each kept only where no
/// check of walls, edges or obstructions finds fault with it. A drawer without an insert stays as it is.
Tidied tidied(const job::Job& job, const std::string& drawer, Wish wish);

/// Whether it is worth a step: a label turned, or what the wish is after better by a tenth of a millimeter.
bool gains(const Tidied& tidied);

} // namespace drawercast::arrange
