// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/pressure.h"

#include <algorithm>

namespace drawercast::casting {
Pressure pressure_of(const PressureIn& in) {
    GasIn worst = gas_of(in.mold);
    worst.expansion = in.band.high.expansion;
    worst.net_mm3 = in.band.high.net_mm3;
    worst.hotter_k += further_hotter_k;

    Pressure out;
    out.closed_kpa = in.band.expected.closed_kpa;
    out.low_kpa = std::max(0.0, in.band.low.closed_kpa);
    out.high_kpa = in.band.high.closed_kpa;
    out.build_for_kpa = std::max(in.pressure_factor * out.closed_kpa, gas_kpa(worst));
    out.lift_n = out.closed_kpa * in.mold.insert_area_mm2 / 1000;
    return out;
}

} // namespace drawercast::casting
