// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/closing.h"

#include "casting/pressure.h"
#include "casting/rise.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace drawercast::mold {

namespace {

using casting::PushIn;

/// One foam's pressure over time, with what to multiply it by.
struct Load {
    PushIn push;
    double factor = 1;
};

/// One case to be closed in: what the pattern must bear at each moment, and when the foam is at the plate.
struct Case {
    std::vector<Load> loads;
    double touch_s = 0;
    double end_s = 0; ///< nothing changes after it

    double bear_kpa(double t_s) const {
        double most = 0;
        for (const Load& load : loads) most = std::max(most, load.factor * casting::push_kpa(load.push, t_s));
        return most;
    }
};

double end_of(const casting::RiseCurve& curve) {
    return casting::time_of(curve, casting::full_expansion(curve));
}

void add_loads(Case& out, const casting::Profile& profile, const casting::GasIn& gas, double factor) {
    for (const auto& curve : casting::rise_curves(profile, gas.expansion)) {
        out.loads.push_back({{gas, curve}, factor});
        out.end_s = std::max(out.end_s, end_of(curve));
    }
}

Case expected_case(const ClosingIn& in) {
    Case out;
    out.touch_s = in.times.touch_s;
    add_loads(out, in.mold.profile, casting::gas_of(in.mold), in.pressure_factor);
    casting::GasIn high = casting::gas_of(in.mold);
    high.expansion = in.band.high.expansion;
    high.net_mm3 = in.band.high.net_mm3;
    high.hotter_k += casting::further_hotter_k;
    add_loads(out, in.mold.profile, high, 1);
    return out;
}

Case quick_case(const ClosingIn& in) {
    casting::Profile quick = in.mold.profile;
    quick.pot_life_s *= quick_foam;
    quick.rise_s *= quick_foam;
    if (quick.cup) {
        quick.cup->start_s *= quick_foam;
        quick.cup->half_s *= quick_foam;
        quick.cup->full_s *= quick_foam;
    }
    Case out;
    const auto curves = casting::rise_curves(quick, quick.expansion);
    const double contact = casting::earliest(curves, casting::full_mold(casting::gas_of(in.mold)));
    out.touch_s = std::min(contact, casting::earliest(curves, in.height_mm / in.times.liquid_level_mm));
    add_loads(out, quick, casting::gas_of(in.mold), in.pressure_factor);
    return out;
}

/// Closures needed under this pressure, never more than there are.
int needed(const Pattern& pattern, double kpa) {
    const double all = pattern.count * pattern.worst_share_per_kpa * kpa;
    return std::min(pattern.count, static_cast<int>(std::ceil(all - 1e-9)));
}

/// The first moment at which `count` closures are needed; none where they never are.
std::optional<double> when_needed(const Case& foam, const Pattern& pattern, int count) {
    if (needed(pattern, foam.bear_kpa(foam.end_s)) < count) return std::nullopt;
    double before = 0;
    double after = foam.end_s;
    while (after - before > 1e-6) { // pressure never falls while the foam rises
        const double middle = (before + after) / 2;
        (needed(pattern, foam.bear_kpa(middle)) < count ? before : after) = middle;
    }
    return after;
}

/// Time until `count` closures are in: as many at once as there are drivers, each done when its time is over.
double driving_s(const ClosingIn& in, const Pattern& pattern, int count) {
    return std::ceil(static_cast<double>(count) / in.drivers) * pattern.seconds;
}

/// How many are in after `since_s` of driving, never more than there are.
int driven_in(const ClosingIn& in, const Pattern& pattern, double since_s) {
    if (since_s < 0) return 0;
    if (pattern.seconds <= 0) return pattern.count;
    const double rounds = std::floor(since_s / pattern.seconds + 1e-9);
    return static_cast<int>(std::min<double>(pattern.count, rounds * in.drivers));
}

/// The latest moment for the plate to be on.
struct Latest {
    double t_s = std::numeric_limits<double>::infinity();
    bool by_touch = false;
};

Latest latest_plate_on(const ClosingIn& in, const Pattern& pattern, const Case& foam) {
    Latest out{foam.touch_s, true};
    for (int count = 1; count <= pattern.count; ++count) {
        const auto at = when_needed(foam, pattern, count);
        if (!at) break;
        const double latest = *at - driving_s(in, pattern, count);
        if (latest < out.t_s) out = {latest, false};
    }
    return out;
}

int in_by_contact(const ClosingIn& in, const Pattern& pattern, const Case& foam) {
    int most = needed(pattern, foam.bear_kpa(in.times.contact_s));
    for (int count = most + 1; count <= pattern.count; ++count) {
        const auto at = when_needed(foam, pattern, count);
        if (!at) break;
        most = std::max(most, count - driven_in(in, pattern, std::max(0.0, *at - in.times.contact_s)));
    }
    return std::max(0, most);
}

} // namespace

Closing closing_of(const ClosingIn& in, const Pattern& pattern) {
    const Case usual = expected_case(in);
    const Latest latest = latest_plate_on(in, pattern, usual);
    const Latest quick = latest_plate_on(in, pattern, quick_case(in));
    const Latest& worse = quick.t_s < latest.t_s ? quick : latest;
    Closing out;
    out.plate_on_s = in.plate_on_s;
    out.close_s = driving_s(in, pattern, pattern.count);
    out.close_margin_s = worse.t_s - in.plate_on_s;
    out.by_touch = worse.by_touch;
    out.in_by_contact = in_by_contact(in, pattern, usual);
    return out;
}

std::vector<Moment> moments_of(const ClosingIn& in, const Pattern& pattern, double step_s, double end_s) {
    const Case usual = expected_case(in);
    const auto curves = casting::rise_curves(in.mold.profile, in.mold.profile.expansion);
    const casting::GasIn gas = casting::gas_of(in.mold);
    std::vector<Moment> out;
    for (int i = 0; i * step_s <= end_s; ++i) {
        Moment now;
        now.t_s = i * step_s;
        for (const auto& curve : curves) {
            now.expansion = std::max(now.expansion, casting::expansion_after(curve, now.t_s));
            now.expected_kpa = std::max(now.expected_kpa, casting::push_kpa({gas, curve}, now.t_s));
        }
        now.build_for_kpa = usual.bear_kpa(now.t_s);
        now.needed = needed(pattern, now.build_for_kpa);
        now.in = driven_in(in, pattern, now.t_s - in.plate_on_s);
        out.push_back(now);
    }
    return out;
}

} // namespace drawercast::mold
