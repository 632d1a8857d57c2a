// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/front.h"
#include "air/joined.h"
#include "base/watch.h"

#include <vector>

namespace drawercast::air {

inline constexpr double event_width = 0.01; ///< to how much of expansion a change of the air is pinned down

/// Where there is still air at one expansion.
struct Moment {
    Front front;
    Joined dry; ///< pieces of cells that are not full
};

/// The rise as moments of growing expansion, from the first touch to just before the mold is full. Between
/// any two neighbors further apart than event_width no piece of air splits or goes.
class History {
  public:
    History(const Cells& cells, const Pieces& pieces, Rise& rise);

    /// False where `watch` asked to stop: then there is no history.
    bool follow(const Watch& watch);
    /// Puts more moments where a cell of `marked` gets full, to event_width.
    bool refine_at(const std::vector<std::size_t>& marked, const Watch& watch);

    const std::vector<Moment>& moments() const { return moments_; }
    const Values& push_when_full() const { return push_when_full_; } ///< W in the full mold
    const Cells& cells() const { return cells_; }
    double full_expansion() const { return rise_.full_expansion(); }

  private:
    Moment moment_at(double expansion, const Front& before);
    template <class Changes>
    bool refine(Changes changes, const Watch& watch);

    const Cells& cells_;
    const Pieces& pieces_;
    Rise& rise_;
    std::vector<Moment> moments_;
    Values push_when_full_;
};

/// The piece of `earlier` that each piece of `later` is part of; index 0 unused.
std::vector<int> parents_of(const Joined& later, const Joined& earlier);

} // namespace drawercast::air
