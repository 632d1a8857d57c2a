// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/watch.h"
#include "job/job.h"

#include "arrange/strip.h"

#include <string>

namespace drawercast::arrange {

/// A job with more of its objects placed.
struct Arranged {
    job::Job job;
    int placed = 0; ///< pockets that are new
    int left = 0;   ///< objects that found no room
};

/// Places what is not placed yet into that drawer, in quarter turns, around what stands there; where
/// something finds no room, once more with all that is not locked free to move. Walls by depth, edges,
/// obstructions and notches are kept as the checks ask for them: whatever a check still finds at a new pocket
/// takes it out again, and what stood there is moved only where everything is clean. The same answer for the
/// same seed and budget, unless `watch` stops it: then the best so far. A drawer without an insert gets
/// nothing.
Arranged arranged(const job::Job& job, const std::string& drawer, const Budget& budget, const Watch& watch);

/// The drawers in turn, each with what the ones before it had no room for.
Arranged arranged(const job::Job& job, const Budget& budget, const Watch& watch);

} // namespace drawercast::arrange
