// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/history.h"

#include <vector>

namespace drawercast::air {

/// A place where air is left last.
struct AirPocket {
    shape::Vec at;                       ///< centroid of the liquid that it still lacks, just before it goes
    std::size_t cell = 0;                ///< the one nearest to that, of those that are not full yet
    double expansion = 0;                ///< at which it goes
    double air_ml = 0;                   ///< when it parts from the rest, at ambient pressure
    std::vector<std::size_t> last_cells; ///< not full just before it goes
};

/// Pockets with less air than this when they part from others are below what the mesh can tell; our guess.
inline constexpr double least_pocket_ml = 0.3;

/// In order of expansion, then place.
std::vector<AirPocket> air_pockets_of(const History& history);

/// Air that some vents leave in the mold.
struct Trapped {
    double air_ml = 0;             ///< V_air: all of it, at ambient pressure
    std::vector<double> shares_ml; ///< of each air pocket: what stays there
};

/// A piece of air without a vent that is not yet foamed over stays; what it holds when that begins is shared
/// among the pockets it ends in, as their own air. `vents`: the cells under them.
Trapped trapped_by(const History& history, const std::vector<AirPocket>& pockets,
                   const std::vector<std::size_t>& vents);

} // namespace drawercast::air
