// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/band.h"

namespace drawercast::casting {

inline constexpr double further_hotter_k = 10; ///< of the high end that is built for (our guess)

struct PressureIn {
    BandIn mold;
    Band band; ///< band_of(mold)
    double pressure_factor = 1.5;
    bool operator==(const PressureIn&) const = default;
};

/// Closed pressure, the band's ends and what to build for: the greater of `pressure_factor` times closed and
/// of the high end 10 K hotter still (our guess). An estimate with two stated allowances, not a bound: real
/// foam may be hotter yet.
Pressure pressure_of(const PressureIn& in);

} // namespace drawercast::casting
