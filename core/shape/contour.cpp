// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/contour.h"

#include "base/demand.h"
#include "shape/segments.h"

#include <numbers>

namespace drawercast::shape {

double turn_at(const Ring& ring, std::size_t i) {
    const std::size_t n = ring.size();
    const Vec before = ring[i] - ring[(i + n - 1) % n];
    const Vec after = ring[(i + 1) % n] - ring[i];
    return std::atan2(cross(before, after), dot(before, after));
}

namespace {

double core_perimeter(const Ring& core) { return perimeter(core); } // a segment there and back, a point 0

/// What the corners add: Σ of the convex turns, and Σ tan(turn/2) of the reflex ones.
struct Turns {
    double convex = 2 * std::numbers::pi;
    double reflex_tangents = 0;
};
Turns turns_of(const Contour& contour) {
    if (convex(contour)) return {};
    Turns sum{0, 0};
    for (std::size_t i = 0; i < contour.core.size(); ++i) {
        const double turn = turn_at(contour.core, i);
        if (turn > 0)
            sum.convex += turn;
        else
            sum.reflex_tangents += std::tan(-turn / 2);
    }
    return sum;
}

Vec ring_centroid(const Ring& ring) {
    Vec sum;
    double twice = 0;
    for (std::size_t i = 1; i + 1 < ring.size(); ++i) {
        const Vec b = ring[i] - ring[0];
        const Vec c = ring[i + 1] - ring[0];
        const double part = cross(b, c);
        twice += part;
        sum = sum + (b + c) * (part / 3);
    }
    return twice > 0 ? ring[0] + sum * (1 / twice) : bounds(ring).center();
}

/// Cores that a half turn maps onto themselves: their center is the outline's, whatever the round radius.
bool centrally_symmetric(const Ring& core) {
    return core.size() < 3 ||
           (core.size() == 4 && length(core[0] + core[2] - core[1] - core[3]) < touching_mm);
}

} // namespace

Contour placed(const Contour& contour, const Pose& pose) {
    const Turn turn = Turn::of_degrees(pose.turn_deg);
    Contour out{{}, contour.round_mm};
    out.core.reserve(contour.core.size());
    for (const Vec p : contour.core) out.core.push_back(turn(p) + pose.at);
    return out;
}

double area(const Contour& contour) {
    const double r = contour.round_mm;
    if (r == 0) return area(contour.core);
    const Turns turns = turns_of(contour);
    return area(contour.core) + core_perimeter(contour.core) * r +
           r * r * (turns.convex / 2 - turns.reflex_tangents);
}

double perimeter(const Contour& contour) {
    const double r = contour.round_mm;
    if (r == 0) return core_perimeter(contour.core);
    const Turns turns = turns_of(contour);
    return core_perimeter(contour.core) + r * (turns.convex - 2 * turns.reflex_tangents);
}

Box bounds(const Contour& contour) { return bounds(contour.core).grown(contour.round_mm); }

Vec centroid(const Contour& contour) {
    DRAWERCAST_DEMAND(!contour.core.empty(), "an outline has a core");
    if (centrally_symmetric(contour.core)) return bounds(contour.core).center();
    return ring_centroid(contour.round_mm == 0 ? contour.core : traced(contour));
}

bool contains(const Contour& contour, Vec p) {
    if (holds(contour.core, p)) return true;
    return length(nearest_on_core(contour.core, p) - p) <= contour.round_mm + touching_mm;
}

bool convex(const Contour& contour) {
    const Ring& ring = contour.core;
    const std::size_t n = ring.size();
    if (n < 4) return true;
    for (std::size_t i = 0; i < n; ++i) {
        const Vec before = ring[(i + 1) % n] - ring[i];
        const Vec after = ring[(i + 2) % n] - ring[(i + 1) % n];
        // straight on, within what turning a straight side leaves of it
        if (cross(before, after) < -1e-12 * (length(before) * length(after)) - 1e-12) return false;
    }
    return true;
}

} // namespace drawercast::shape
