// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/cells.h"

#include <vector>

namespace drawercast::air {

/// How hard the floor over a block is to fill from the channels around it: the greatest φ of −div(h² grad φ)
/// = 1 over the block, φ = 0 where it borders open channel, no flux at walls; no unit. Over a rectangle and
/// at one height it is the torsion function's greatest value over h² (Timoshenko and Goodier, Theory of
/// Elasticity, section on torsion of a rectangular bar; from memory): b²/8 − (4b²/π³)Σ_odd
/// n(−1)^((n−1)/2)/(n³cosh(nπa/2b)).
struct Slowness {
    int pocket = 0;
    double phi = 0;
    shape::Vec at; ///< where it is greatest
};

/// Of each pocket that has a floor over its block, in order. A floor that foam has no way to is left out.
std::vector<Slowness> slowness_of(const Floor& floor, const Cells& cells);

} // namespace drawercast::air
