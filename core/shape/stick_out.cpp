// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/stick_out.h"

#include "shape/segments.h"

namespace drawercast::shape {
namespace {

constexpr double settled_mm = 1e-6;

struct Stretch { ///< part of one side of the inner ring, wholly outside
    Vec from, to;
};

/// The parts of the side a–b that lie outside the ring.
std::vector<Stretch> outside(Vec a, Vec b, const Ring& ring) {
    std::vector<double> cuts{0, 1};
    const double whole = dot(b - a, b - a);
    for (std::size_t i = 0; i < ring.size(); ++i)
        if (const auto at = crossing(a, b, ring[i], side_end(ring, i)))
            cuts.push_back(dot(*at - a, b - a) / whole);
    std::sort(cuts.begin(), cuts.end());
    std::vector<Stretch> out;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const Stretch part{a + (b - a) * cuts[i], a + (b - a) * cuts[i + 1]};
        if (!holds(ring, (part.from + part.to) * 0.5)) out.push_back(part);
    }
    return out;
}

/// No point of the stretch is further from the ring than this: the distance to each side is convex along it.
double at_most(const Stretch& part, const Ring& ring) {
    double least = any_distance;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Vec c = ring[i];
        const Vec d = side_end(ring, i);
        least = std::min(least, std::max(length(part.from - nearest_on(part.from, c, d)),
                                         length(part.to - nearest_on(part.to, c, d))));
    }
    return least;
}

void offer(Gap& worst, Vec p, const Ring& ring) {
    const Vec on = nearest_on_core(ring, p);
    if (const double mm = -length(p - on); mm < worst.mm) worst = {mm, p, on};
}

} // namespace

Gap stick_out(const Contour& inner, const Contour& outer) {
    const Ring& ring = outer.core;
    Gap worst{0, inner.core[0], nearest_on_core(ring, inner.core[0])};
    std::vector<Stretch> open;
    for (std::size_t i = 0; i < inner.core.size(); ++i)
        for (const Stretch& part : outside(inner.core[i], side_end(inner.core, i), ring))
            open.push_back(part);
    for (const Stretch& part : open) offer(worst, part.from, ring);
    while (!open.empty()) { // halve what could still hide a further point
        const Stretch part = open.back();
        open.pop_back();
        if (at_most(part, ring) <= settled_mm - worst.mm) continue;
        const Vec middle = (part.from + part.to) * 0.5;
        offer(worst, middle, ring);
        open.push_back({part.from, middle});
        open.push_back({middle, part.to});
    }
    return worst;
}

} // namespace drawercast::shape
