// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"
#include "casting/band.h"
#include "casting/push.h"

#include <vector>

/// Whether the plate can be closed before the foam pushes it off.
namespace drawercast::mold {

struct ClosingIn {
    casting::BandIn mold; ///< with its dose and the air shut in
    casting::Band band;   ///< band_of(mold)
    casting::Times times;
    double pressure_factor = 1.5;
    double height_mm = 0;  ///< of the mold
    double plate_on_s = 0; ///< from the start of mixing: mix, pour, set the plate
    int drivers = 1;
    bool operator==(const ClosingIn&) const = default;
};

/// The full pattern: how many, how long each takes one driver, and its strength.
struct Pattern {
    int count = 0;
    double seconds = 3;
    double worst_share_per_kpa = 0; ///< pull of the worst over a third of its capacity, for 1 kPa
    bool operator==(const Pattern&) const = default;
};

/// Seconds from the start of mixing.
struct Closing {
    double plate_on_s = 0;
    double close_s = 0; ///< all closures
    double close_margin_s =
        0;                 ///< by how much the plate may come on later in the worse case; < 0: must be sooner
    int in_by_contact = 0; ///< closures that must be in when the mold is full
    bool by_touch = false; ///< it is the foam's reaching the plate that sets the margin
    bool operator==(const Closing&) const = default;
};

/// Times too are an estimate: everything must also be closed where the foam is that much quicker (our guess).
inline constexpr double quick_foam = 0.8;

/// At every moment of the rise as many closures must be in as the full pattern's share of the pressure needs:
/// n(t) ≥ N·U·p(t), with p the greater of `pressure_factor` times expected and of the high end 10 K hotter, U
/// the worst closure's share; with foam quicker by `quick_foam` p is `pressure_factor` times expected. The
/// plate itself must be on before the foam in the channels reaches it.
Closing closing_of(const ClosingIn& in, const Pattern& pattern);

/// For drawing: one moment of the pour.
struct Moment {
    double t_s = 0;
    double expansion = 1;    ///< least and greatest of the curves are one with a cup
    double expected_kpa = 0; ///< the greatest of the curves
    double build_for_kpa = 0;
    int needed = 0; ///< closures
    int in = 0;
    bool operator==(const Moment&) const = default;
};
std::vector<Moment> moments_of(const ClosingIn& in, const Pattern& pattern, double step_s, double end_s);

} // namespace drawercast::mold
