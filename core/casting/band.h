// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"
#include "casting/gas.h"
#include "casting/profile.h"

#include <optional>

namespace drawercast::casting {

inline constexpr double cavity_uncertainty_mm = 0.5; ///< of the mold's depth, up and down (our guess)
inline constexpr double flow_index = 1.05; ///< least fill at the low end: foam does not flow for nothing
inline constexpr double hard_fill = 1.40;  ///< greatest fill at the high end (our guess)

/// A mold's net volume 0.5 mm deeper and shallower than planned.
double deepest_mm3(double net_mm3, double insert_area_mm2);
double shallowest_mm3(double net_mm3, double insert_area_mm2);

/// One mold with its dose.
struct BandIn {
    Profile profile;
    double poured_ml = 0; ///< less than the shallowest mold holds
    double net_mm3 = 0;
    double insert_area_mm2 = 0; ///< of the mold
    double hotter_k = 0;        ///< than where E was read: the foam's mold_hotter_k and a warmer day
    double air_ml = 0;          ///< shut in
    bool operator==(const BandIn&) const = default;
};

GasIn gas_of(const BandIn& in);

/// The same dose if the foam rises E(1 − u) times into a mold 0.5 mm deeper, as expected, and E(1 + u) times
/// into one 0.5 mm shallower; u as in Profile.
Band band_of(const BandIn& in);

/// What the dose that is right at sea level would do here (the altitude's note says so).
struct SeaLevelDose {
    double poured_ml = 0;
    double fill = 0;                  ///< E'·V_L/V_net
    std::optional<double> closed_kpa; ///< absent where the liquid alone would fill the mold
    bool operator==(const SeaLevelDose&) const = default;
};
SeaLevelDose sea_level_dose(const BandIn& in, double overpack);

} // namespace drawercast::casting
