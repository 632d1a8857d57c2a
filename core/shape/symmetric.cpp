// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/symmetric.h"

#include "shape/region.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::shape {

namespace {

constexpr double share_least = 0.9;
constexpr double tried_deg = 15, fine_deg = 0.02;
constexpr double chord_mm = 0.02; // arcs: below what is cut by hand

/// Still walked around the same way.
Ring mirrored(const Ring& ring, Vec through, double axis_deg) {
    const double twice = 2 * axis_deg * std::numbers::pi / 180, c = std::cos(twice), s = std::sin(twice);
    Ring out;
    for (auto p = ring.rbegin(); p != ring.rend(); ++p) {
        const Vec d = *p - through;
        out.push_back(through + Vec{c * d.x + s * d.y, s * d.x - c * d.y});
    }
    return out;
}

double distance_to(const Ring& ring, Vec p) {
    double least = 1e300;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Vec a = ring[i], along = ring[(i + 1) % ring.size()] - a;
        const double t = std::clamp(dot(p - a, along) / std::max(1e-18, dot(along, along)), 0.0, 1.0);
        least = std::min(least, length(a + along * t - p));
    }
    return least;
}

} // namespace

std::optional<SymmetricShape> symmetric_shape(const Contour& contour) {
    const Ring ring = traced(contour, chord_mm);
    if (ring.size() < 3) return std::nullopt;
    const Region whole = region_of(ring);
    const double own = area(whole);
    if (!(own > 0)) return std::nullopt;
    const Vec middle = centroid(contour);
    const auto common = [&](double axis_deg) {
        const auto both = shared(whole, region_of(mirrored(ring, middle, axis_deg)));
        return both ? area(*both) : 0.0;
    };
    double best = 0, most = -1;
    for (double axis = 0; axis < 180; axis += tried_deg)
        if (const double here = common(axis); here > most) most = here, best = axis;
    const double golden = (std::sqrt(5.0) - 1) / 2;
    double low = best - tried_deg, high = best + tried_deg;
    double a = high - golden * (high - low), b = low + golden * (high - low);
    double at_a = common(a), at_b = common(b);
    while (high - low > fine_deg) {
        if (at_a > at_b) {
            high = b, b = a, at_b = at_a;
            a = high - golden * (high - low), at_a = common(a);
        } else {
            low = a, a = b, at_a = at_b;
            b = low + golden * (high - low), at_b = common(b);
        }
    }
    if (const double here = std::max(at_a, at_b); here > most) most = here, best = at_a > at_b ? a : b;
    if (most < share_least * own) return std::nullopt;
    const auto both = united(whole, region_of(mirrored(ring, middle, best)));
    if (!both || both->patches.size() != 1) return std::nullopt;
    SymmetricShape out;
    for (const Vec p : both->patches.front().outer) {
        out.polygon.corners.push_back({grained_at(p), 0});
        if (!contains(contour, p)) out.reach_mm = std::max(out.reach_mm, distance_to(ring, p));
    }
    out.more_mm2 = std::max(0.0, area(both->patches.front().outer) - own);
    return out;
}

} // namespace drawercast::shape
