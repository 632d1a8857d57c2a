// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/times.h"

#include "casting/gas.h"
#include "casting/rise.h"

#include <algorithm>

namespace drawercast::casting {

Times times_of(const TimesIn& in) {
    const auto curves = rise_curves(in.profile, in.profile.expansion);
    Times out;
    out.pot_life_s = in.profile.pot_life_s;
    out.rise_s = in.profile.rise_s;
    out.demold_min = in.profile.demold_min;
    out.liquid_level_mm = in.liquid_level_mm;
    GasIn gas;
    gas.net_mm3 = in.net_mm3, gas.poured_ml = in.poured_ml, gas.air_ml = in.air_ml;
    out.contact_s = earliest(curves, full_mold(gas));
    out.touch_s = std::min(out.contact_s, earliest(curves, in.height_mm / in.liquid_level_mm));
    out.pour_margin_s = in.profile.pot_life_s - in.profile.mix_s - in.pour_s;
    return out;
}

} // namespace drawercast::casting
