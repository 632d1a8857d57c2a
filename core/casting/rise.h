// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/profile.h"

#include <variant>
#include <vector>

/// How foam rises: expansion over time, from the start of mixing.
namespace drawercast::casting {

/// E(t) = 1 + (E' − 1)(3v² − 2v³), v = (t − pot)/(rise − pot) within 0 … 1. Our guess of a slow start.
struct Smoothstep {
    double pot_life_s = 0;
    double rise_s = 0;
    double expansion = 0;
    bool operator==(const Smoothstep&) const = default;
};

/// E(t) = 1 + (E' − 1)(1 − exp(−ln 100·(t − 0.9·pot)/(rise − 0.9·pot))), E' from `rise_s` on. A first-order
/// rise that is 99 % done when the label says it is: our guess of a quick start.
struct FirstOrder {
    double pot_life_s = 0;
    double rise_s = 0;
    double expansion = 0;
    bool operator==(const FirstOrder&) const = default;
};

/// A monotone cubic through (start, 1), (half, (1 + E')/2), (full, E').
/// Source: Fritsch and Butland (1984), SIAM J. Sci. Stat. Comput. 5, 300–304, with their three-point end
/// slopes.
struct CupRise {
    CupTimes times;
    double expansion = 0;
    bool operator==(const CupRise&) const = default;
};

using RiseCurve = std::variant<Smoothstep, FirstOrder, CupRise>;

/// The curves to reckon with: a cup in use gives one; else both guesses, of which always the worse one
/// counts. `expansion` is E' or one end of its band.
std::vector<RiseCurve> rise_curves(const Profile& profile, double expansion);

double full_expansion(const RiseCurve& curve);

/// Expansion at `t_s`: 1 before the rise, the curve's full expansion after it.
double expansion_after(const RiseCurve& curve, double t_s);

/// The first moment at which the expansion is `wanted`; that of full rise where it asks for more, of the
/// start where for less than 1.
double time_of(const RiseCurve& curve, double wanted);

/// The earliest over all `curves`.
double earliest(const std::vector<RiseCurve>& curves, double wanted);

} // namespace drawercast::casting
