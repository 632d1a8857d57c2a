// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/mesh.h"

#include <vector>

namespace drawercast::air {

/// A line on which a field has one value. Closed ones repeat their first point.
using LevelLine = std::vector<shape::Vec>;

/// The lines on which `values` (at cell centers, those not > 0 are walls) are `level`, linear between
/// neighbors; each as long as it hangs together. Marching squares, a saddle cut so that the higher sides stay
/// apart.
std::vector<LevelLine> level_lines(const Mesh& mesh, const Values& values, double level);

} // namespace drawercast::air
