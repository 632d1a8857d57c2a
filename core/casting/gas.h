// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace drawercast::casting {

/// One state of a closed mold.
struct GasIn {
    double ambient_kpa = 0;
    double expansion = 0; ///< E' now, at this altitude
    double poured_ml = 0;
    double net_mm3 = 0;
    double measured_k = 0; ///< absolute temperature at which the expansion was read
    double hotter_k = 0;   ///< how much hotter the foam in the mold is
    double air_ml = 0;     ///< shut in with no way out, at ambient pressure
    bool operator==(const GasIn&) const = default;
};

/// Expansion at which the foam fills all of the mold that shut-in air leaves it: (V_net − V_air)/V_L; there
/// its gauge pressure is 0.
double full_mold(const GasIn& in);

/// Gauge pressure of the foam, kPa: p·[((E' − 1)·V_L + V_air)/(V_net − V_L)·(T + ΔT)/T − 1]. All gas in
/// closed bubbles, ideal, nothing vented or dissolved; the liquid keeps its volume. Negative where the mold
/// is not full. Needs poured_ml·1000 < net_mm3. Source: ideal gas law.
double gas_kpa(const GasIn& in);

} // namespace drawercast::casting
