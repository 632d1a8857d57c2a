// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/mesh.h"
#include "shape/level_lines.h"

#include <vector>

namespace drawercast::air {

/// The lines on which `values` (at cell centers, those not > 0 are walls) are `level`.
std::vector<shape::LevelLine> level_lines(const Mesh& mesh, const Values& values, double level);

} // namespace drawercast::air
