// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/budget.h"
#include "base/watch.h"
#include "job/job.h"

#include <functional>
#include <string>
#include <vector>

namespace drawercast::arrange {

/// A job with more of its objects placed.
struct Arranged {
    job::Job job;
    int placed = 0; ///< pockets that are new
    int moved = 0;  ///< pockets that stood there and stand elsewhere now
    int left = 0;   ///< objects that found no room
};

/// What of the pockets that stand already may move: none; all that are not locked; none at first, and the
/// others only where something finds no room otherwise.
enum class Moving { none, unlocked, unlocked_if_needed };

/// Told each answer that is better than the one before, checked like the last one.
using Tell = std::function<void(const Arranged&)>;
inline void tell_nobody(const Arranged&) {}

/// Places what is not placed yet into that drawer, in the turns each object allows. What stands there and may
/// move starts where it is, so that what is in order stays. Walls by depth, edges, obstructions and notches
/// are kept as the checks ask for them: whatever a check still finds at a new pocket takes it out again, and
/// what stood there is moved only where nothing gets worse. The same answer for the same seed and budget,
/// unless `watch` stops it: then the best so far. A drawer without an insert gets nothing.
Arranged arranged(const job::Job& job, const std::string& drawer, Moving moving, const Budget& budget,
                  const Watch& watch, const Tell& tell = tell_nobody);

/// The drawers in turn, each with what the ones before it had no room for.
Arranged arranged(const job::Job& job, Moving moving, const Budget& budget, const Watch& watch,
                  const Tell& tell = tell_nobody);

/// What one drawer by itself would take of what is not placed.
struct Trial {
    std::string drawer; ///< id
    Arranged arranged;
};
/// Every drawer tried by itself, what stands in it unmoved; those that take the most first, of them the
/// smallest insert.
std::vector<Trial> each_drawer(const job::Job& job, const Budget& budget, const Watch& watch);

/// How many objects are placed in no drawer yet.
int not_placed_yet(const job::Job& job);

} // namespace drawercast::arrange
