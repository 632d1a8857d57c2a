// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/squeeze.h"

#include "casting/dose.h"
#include "casting/push.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::air {

Impulse impulse_of(const casting::BandIn& mold) {
    const casting::GasIn gas = casting::gas_of(mold);
    const double after = std::max(0.0, casting::gas_kpa(gas)) * flows_after_rise_s;
    Impulse out;
    bool first = true;
    for (const auto& curve : casting::rise_curves(mold.profile, mold.profile.expansion)) {
        const double kpa_s = std::max(0.0, casting::push_kpa_s({gas, curve}));
        out.filling_kpa_s = first ? kpa_s : std::min(out.filling_kpa_s, kpa_s);
        out.leaving_kpa_s = std::max(out.leaving_kpa_s, kpa_s + after);
        first = false;
    }
    return out;
}

double squeezed_out_mm3(std::span<const Vent> vents, double leaving_kpa_s, double viscosity_pa_s,
                        double plate_mm) {
    double sum = 0;
    for (const Vent& vent : vents) {
        const double d = vent.diameter_mm;
        sum += 1000 * std::numbers::pi * d * d * d * d * leaving_kpa_s /
               (128 * viscosity_pa_s * plate_mm * (1 + 3 * std::numbers::pi * d / (16 * plate_mm)));
    }
    return sum;
}

Squeeze squeeze_of(const SqueezeIn& in, std::span<const Vent> vents) {
    const double kpa_s = impulse_of(in.mold).leaving_kpa_s;
    const auto out_mm3 = [&](double viscosity) {
        return squeezed_out_mm3(vents, kpa_s, viscosity, in.plate_mm);
    };
    const auto held = [&](double viscosity) {
        casting::GasIn gas = casting::gas_of(in.mold);
        gas.poured_ml *= std::max(0.0, 1 - out_mm3(viscosity) / in.mold.net_mm3);
        return casting::gas_kpa(gas);
    };
    Squeeze out;
    out.out_ml = out_mm3(in.viscosity_pa_s) / 1000;
    out.limit_ml = casting::squeeze_out_share * in.overpack * in.mold.net_mm3 / 1000;
    out.held_kpa = held(in.viscosity_pa_s);
    out.held_thin_kpa = held(in.viscosity_pa_s / 2);
    out.held_thick_kpa = held(in.viscosity_pa_s * 2);
    out.unsure =
        std::max(std::abs(out.held_thin_kpa - out.held_kpa), std::abs(out.held_thick_kpa - out.held_kpa)) >
        unsure_share * std::abs(out.held_kpa);
    return out;
}

} // namespace drawercast::air
