// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"
#include "casting/profile.h"

namespace drawercast::casting {

struct TimesIn {
    Profile profile;
    double poured_ml = 0;
    double pour_s = 0;  ///< of each batch
    double net_mm3 = 0; ///< what the mold holds
    double height_mm = 0;
    double liquid_level_mm = 0; ///< where the poured liquid stands in the channels, fillets left out
    double air_ml = 0;          ///< shut in; 0 while it is not known
    bool operator==(const TimesIn&) const = default;
};

/// Today's times, each the earliest of the rise curves: `touch_s` where the foam in the channels has grown by
/// H/Z and reaches the plate, `contact_s` where it has grown by (V_net − V_air)/V_L and the mold is full.
/// Touch is never later than contact.
Times times_of(const TimesIn& in);

} // namespace drawercast::casting
