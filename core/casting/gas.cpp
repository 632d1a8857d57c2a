// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/gas.h"

#include "base/demand.h"

namespace drawercast::casting {

double full_mold(const GasIn& in) { return (in.net_mm3 - 1000 * in.air_ml) / (1000 * in.poured_ml); }

double gas_kpa(const GasIn& in) {
    const double liquid_mm3 = 1000 * in.poured_ml;
    DRAWERCAST_DEMAND(liquid_mm3 < in.net_mm3, "liquid alone must not fill the mold");
    const double gas_mm3 = (in.expansion - 1) * liquid_mm3 + 1000 * in.air_ml;
    const double hotter = (in.measured_k + in.hotter_k) / in.measured_k;
    return in.ambient_kpa * (gas_mm3 / (in.net_mm3 - liquid_mm3) * hotter - 1);
}

} // namespace drawercast::casting
