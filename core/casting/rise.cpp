// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/rise.h"

#include "base/demand.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace drawercast::casting {
namespace {

const double ln_100 = std::log(100.0);
constexpr double quick_start = 0.9; // of the pot life

/// How much of the rise is done, 0 … 1, when the foam is `expansion` times its liquid.
double share_done(double expansion, double full) {
    return std::clamp((expansion - 1) / (full - 1), 0.0, 1.0);
}

double at(const Smoothstep& c, double t_s) {
    const double v = std::clamp((t_s - c.pot_life_s) / (c.rise_s - c.pot_life_s), 0.0, 1.0);
    return 1 + (c.expansion - 1) * v * v * (3 - 2 * v);
}

double when(const Smoothstep& c, double wanted) {
    const double y = share_done(wanted, c.expansion);
    const double v = 0.5 - std::sin(std::asin(1 - 2 * y) / 3); // the root of 3v² − 2v³ = y within 0 … 1
    return c.pot_life_s + std::clamp(v, 0.0, 1.0) * (c.rise_s - c.pot_life_s);
}

double at(const FirstOrder& c, double t_s) {
    if (t_s >= c.rise_s) return c.expansion;
    const double start = quick_start * c.pot_life_s;
    const double w = std::max(0.0, (t_s - start) / (c.rise_s - start));
    return 1 + (c.expansion - 1) * -std::expm1(-ln_100 * w);
}

double when(const FirstOrder& c, double wanted) {
    const double start = quick_start * c.pot_life_s;
    const double y = share_done(wanted, c.expansion);
    if (y > 0.99) return c.rise_s; // the last hundredth comes at once
    return start + -std::log1p(-y) / ln_100 * (c.rise_s - start);
}

/// Slopes of the share done at start, half and full.
std::array<double, 3> slopes(const CupTimes& t) {
    const double h0 = t.half_s - t.start_s;
    const double h1 = t.full_s - t.half_s;
    const double d0 = 0.5 / h0;
    const double d1 = 0.5 / h1;
    const double inner = 3 * (h0 + h1) / ((2 * h1 + h0) / d0 + (h1 + 2 * h0) / d1);
    const double first = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
    const double last = ((2 * h1 + h0) * d1 - h1 * d0) / (h0 + h1);
    return {std::clamp(first, 0.0, 3 * d0), inner, std::clamp(last, 0.0, 3 * d1)};
}

double at(const CupRise& c, double t_s) {
    const auto& [start, half, full] = c.times;
    if (t_s <= start) return 1;
    if (t_s >= full) return c.expansion;
    const auto slope = slopes(c.times);
    const bool late = t_s > half;
    const double h = late ? full - half : half - start;
    const double v = (t_s - (late ? half : start)) / h;
    const double from = late ? 0.5 : 0.0;
    const double m0 = slope[late ? 1 : 0] * h;
    const double m1 = slope[late ? 2 : 1] * h;
    const double share =
        from + v * (m0 + v * (1.5 - 2 * m0 - m1 + v * (m0 + m1 - 1))); // Hermite, rising by 0.5
    return 1 + (c.expansion - 1) * share;
}

double when(const CupRise& c, double wanted) {
    if (wanted >= c.expansion) return c.times.full_s;
    double early = c.times.start_s;
    double late = c.times.full_s;
    for (int i = 0; i < 60; ++i) {
        const double middle = (early + late) / 2;
        (at(c, middle) < wanted ? early : late) = middle;
    }
    return (early + late) / 2;
}

} // namespace

std::vector<RiseCurve> rise_curves(const Profile& profile, double expansion) {
    if (profile.cup) return {CupRise{*profile.cup, expansion}};
    return {Smoothstep{profile.pot_life_s, profile.rise_s, expansion},
            FirstOrder{profile.pot_life_s, profile.rise_s, expansion}};
}

double full_expansion(const RiseCurve& curve) {
    return std::visit([](const auto& c) { return c.expansion; }, curve);
}

double expansion_after(const RiseCurve& curve, double t_s) {
    return std::visit([&](const auto& c) { return at(c, t_s); }, curve);
}

double time_of(const RiseCurve& curve, double wanted) {
    return std::visit([&](const auto& c) { return when(c, wanted); }, curve);
}

double earliest(const std::vector<RiseCurve>& curves, double wanted) {
    DRAWERCAST_DEMAND(!curves.empty(), "there is always a rise curve");
    double first = time_of(curves.front(), wanted);
    for (const RiseCurve& curve : curves) first = std::min(first, time_of(curve, wanted));
    return first;
}

} // namespace drawercast::casting
