// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/check.h"
#include "mold/plate_judge.h"

#include <vector>

namespace drawercast::mold {

/// What must be said of a plate: bow, gap, stresses, pull, screws too short or too long, walls, and whether
/// it closes in time. Whether a head pulls through a thin board is not checked, and said to be so: there is
/// no source for it.
std::vector<layout::Check> plate_checks(const PlateIn& in, const Plate& plate);

/// Likewise of a base (base.h): bow, gap, stresses and pull; where it would need bearers and no screw of the
/// shop holds one, that.
std::vector<layout::Check> base_checks(const PlateIn& in, const Plate& base);

/// drill-none: closures whose holes no drill of the shop makes (wanted_holes()).
std::vector<layout::Check> drill_checks(const PlateDesign& design, const std::vector<double>& drills_mm);

} // namespace drawercast::mold
