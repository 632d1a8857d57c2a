// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/gas.h"
#include "casting/rise.h"

namespace drawercast::casting {

struct PushIn {
    GasIn gas;       ///< fully risen: its expansion is the curve's, hotter_k all there will be
    RiseCurve curve; ///< of the same full expansion
    bool operator==(const PushIn&) const = default;
};

/// Pressure on the plate at `t_s` from the start of mixing, kPa: that of the foam as far as it has risen, 0
/// before the mold is full. The mold gets hotter in step, from contact to full rise (our guess).
double push_kpa(const PushIn& in, double t_s);

/// ∫ of it from contact to full rise, kPa·s: what moves foam under a floor or out of a vent.
double push_kpa_s(const PushIn& in);

} // namespace drawercast::casting
