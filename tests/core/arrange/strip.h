// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/budget.h"
#include "arrange/search.h"

/// The program fills drawers; strips are what searches are compared by in print, so the same search is held
/// to the published ones by them.
namespace drawercast::arrange {

/// All figures on a strip of that height.
struct Strip {
    double length = 0;
    Stands stands;                 ///< of each figure; the turn's number within Figure::turns_deg
    std::uint64_t evaluations = 0; ///< made
};

/// The shortest strip found: shortened little by little, parted anew each time
/// (Umetani et al. 2009); where that fails, the search goes on from a failure with little overlap after two
/// figures changed places, and at last the cuts get finer (Gardeyn and Vanden Berghe, arXiv 2509.13329).
/// Rectangles are laid first (skyline.h). Figures must fit into the height.
Strip shortest_strip(const std::vector<Figure>& figures, double height, const Budget& budget,
                     const Watch& watch);

} // namespace drawercast::arrange
