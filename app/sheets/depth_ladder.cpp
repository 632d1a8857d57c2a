// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/depth_ladder.h"

#include "base/units.h"

#include <cmath>

namespace drawercast::sheets {

double ladder_full_mm(double insert_mm, job::DisplayUnits units) {
    constexpr double steps = 6;
    constexpr double rounding = 1e-9;
    const bool metric = units == job::DisplayUnits::mm;
    const double usual = metric ? 60 : 3 * drawercast::units::mm_per_inch;
    if (insert_mm <= usual) return usual;
    const double grain = metric ? 5 : drawercast::units::mm_per_inch / 4;
    return steps * grain * std::ceil(insert_mm / steps / grain - rounding);
}

} // namespace drawercast::sheets
