// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/vents.h"
#include "casting/band.h"
#include "casting/gas.h"

#include <span>

namespace drawercast::air {

inline constexpr double flows_after_rise_s = 30; ///< foam still creeps out of vents (our guess)
inline constexpr double unsure_share = 0.10;     ///< of the held pressure, when viscosity halves or doubles

struct SqueezeIn {
    casting::BandIn mold; ///< with its dose, and the air shut in
    double plate_mm = 0;  ///< length of the holes
    double viscosity_pa_s = 0;
    double overpack = 0;
    bool operator==(const SqueezeIn&) const = default;
};

/// ∫ p dt on the foam in a full mold, kPa·s: over all rise curves the least from contact to full rise (what
/// fills floors) and the greatest to some time after it (what leaves through vents).
struct Impulse {
    double filling_kpa_s = 0;
    double leaving_kpa_s = 0;
    bool operator==(const Impulse&) const = default;
};
Impulse impulse_of(const casting::BandIn& mold);

/// Foam that leaves through `vents` while none is pegged, mm³: Σ 1000·π d⁴ ∫p dt/(128 μ L(1 + 3πd/(16 L))),
/// Poiseuille's flow with both ends' losses (Weissberg (1962), Phys. Fluids 5, 1033; from memory). kPa·s,
/// Pa·s and mm.
double squeezed_out_mm3(std::span<const Vent> vents, double leaving_kpa_s, double viscosity_pa_s,
                        double plate_mm);

struct Squeeze {
    double out_ml = 0;
    double limit_ml = 0;       ///< what was mixed for it
    double held_kpa = 0;       ///< pressure when closed with that gone
    double held_thin_kpa = 0;  ///< were the foam half as viscous
    double held_thick_kpa = 0; ///< or twice
    bool unsure = false;       ///< these differ much from held
    bool operator==(const Squeeze&) const = default;
};
Squeeze squeeze_of(const SqueezeIn& in, std::span<const Vent> vents);

} // namespace drawercast::air
