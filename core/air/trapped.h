// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/history.h"

#include <vector>

namespace drawercast::air {

/// A place where air is left last.
struct AirPocket {
    shape::Vec at;        ///< centroid of the liquid that it still lacks, just before it goes
    std::size_t cell = 0; ///< the one nearest to that, of those that are not full yet
    double expansion = 0; ///< at which it goes
    double air_ml = 0;    ///< when it parts from the rest, at ambient pressure
};

/// Pockets with less air than this when they part from others are below what the mesh can tell; our guess.
inline constexpr double least_pocket_ml = 0.3;

/// How the air in a mold parts and goes while the foam rises: all that asking for vents needs, of a history.
struct AirTree {
    struct Moment {
        double expansion = 0;
        std::vector<int> piece;     ///< of each cell, 0 where it is full
        std::vector<double> air_ml; ///< of each piece, from 1
        std::vector<int> parents;   ///< the piece of the moment before
    };
    Mesh mesh;
    std::vector<Moment> moments;
};
AirTree air_tree_of(const History& history);

/// In order of expansion, then place.
std::vector<AirPocket> air_pockets_of(const History& history);

/// Air that some vents leave in the mold.
struct Trapped {
    double air_ml = 0;             ///< V_air: all of it, at ambient pressure
    std::vector<double> shares_ml; ///< of each air pocket: what stays there
};

/// A piece of air without a vent that is not yet foamed over stays; what it holds when that begins is shared
/// among the pockets it ends in, as their own air. `vents`: the cells under them.
Trapped trapped_by(const AirTree& tree, const std::vector<AirPocket>& pockets,
                   const std::vector<std::size_t>& vents);

/// Of one pocket alone, for vents that are tried one after another beside others that stay.
class StaysIn {
  public:
    StaysIn(const AirTree& tree, const std::vector<AirPocket>& pockets, std::size_t pocket,
            const std::vector<std::size_t>& vents);
    /// trapped_by(…).shares_ml of the pocket, with a vent over `cell` too.
    double with(std::size_t cell) const;

  private:
    struct Step {
        const AirTree::Moment* moment = nullptr;
        int piece = 0;       ///< that the pocket is in
        double share_ml = 0; ///< what stays in the pocket where that piece is without a vent from here on
    };
    std::vector<Step> steps_; ///< without those that the vents serve
};

} // namespace drawercast::air
