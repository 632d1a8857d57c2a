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

/// Likewise of a base (base.h): bow, gap, stresses and pull.
std::vector<layout::Check> base_checks(const Plate& base);

} // namespace drawercast::mold
