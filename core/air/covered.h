// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/mesh.h"
#include "shape/contour.h"

#include <span>
#include <vector>

namespace drawercast::air {

/// How much of a cell an area covers, 0 … 1.
struct Covered {
    std::size_t cell = 0;
    double share = 0;
};

/// The cells of `mesh` that the area inside `rings` covers at all, in order. Exact for the rings: outer ones
/// counter-clockwise, holes clockwise, none crossing another.
std::vector<Covered> covered_by(std::span<const shape::Ring> rings, const Mesh& mesh);

} // namespace drawercast::air
