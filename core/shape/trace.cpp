// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/trace.h"

#include "base/demand.h"

#include <numbers>

namespace drawercast::shape {

Vec outward(Vec from, Vec to) {
    const Vec d = to - from;
    return Vec{d.y, -d.x} * (1 / length(d));
}

namespace {

constexpr double straight = 1e-9; // a turn below this is none, radians

double turn_between(Vec normal, Vec next) { return std::atan2(cross(normal, next), dot(normal, next)); }

/// Points of the arc about `center` from direction `normal` through `angle`, both ends included.
void add_arc(Ring& ring, Vec center, Vec normal, double radius, double angle, double sagitta_mm) {
    const std::size_t chords = chords_for(std::abs(angle), std::abs(radius), sagitta_mm);
    for (std::size_t k = 0; k <= chords; ++k) {
        const double phi = angle * static_cast<double>(k) / static_cast<double>(chords);
        const Turn turn{std::cos(phi), std::sin(phi)};
        ring.push_back(center + turn(normal) * radius);
    }
}

/// The outline of a point or a segment with round ends.
Ring round_ended(const std::vector<Vec>& core, double radius, double sagitta_mm) {
    Ring ring;
    if (core.size() == 1) {
        add_arc(ring, core[0], {1, 0}, radius, 2 * std::numbers::pi, sagitta_mm);
        ring.pop_back(); // the last is the first
        return ring;
    }
    const Vec right = outward(core[0], core[1]);
    add_arc(ring, core[1], right, radius, std::numbers::pi, sagitta_mm);
    add_arc(ring, core[0], right * -1, radius, std::numbers::pi, sagitta_mm);
    return ring;
}

Ring offset_sides(const Ring& ring, double by, double sagitta_mm) {
    Ring out;
    const std::size_t n = ring.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Vec before = outward(ring[(i + n - 1) % n], ring[i]);
        const Vec after = outward(ring[i], ring[(i + 1) % n]);
        const double turn = turn_between(before, after);
        if (by * turn > 0 && std::abs(turn) > straight)
            add_arc(out, ring[i], before, by, turn, sagitta_mm);
        else
            out.push_back(ring[i] + (before + after) * (by / (1 + dot(before, after))));
    }
    return out;
}

} // namespace

std::size_t chords_for(double angle, double radius_mm, double sagitta_mm) {
    constexpr double quarter = std::numbers::pi / 2;
    const double step =
        sagitta_mm >= radius_mm ? quarter : std::min(quarter, 2 * std::acos(1 - sagitta_mm / radius_mm));
    return static_cast<std::size_t>(std::max(1.0, std::ceil(angle / step - 1e-9)));
}

std::optional<Ring> moved_sides(const Ring& ring, double by_mm, double sagitta_mm) {
    const std::size_t n = ring.size();
    std::vector<double> cut(n); // what a closing corner takes off both its sides
    for (std::size_t i = 0; i < n; ++i) {
        const double turn =
            turn_between(outward(ring[(i + n - 1) % n], ring[i]), outward(ring[i], ring[(i + 1) % n]));
        cut[i] = by_mm * turn < 0 ? std::abs(by_mm * std::tan(turn / 2)) : 0;
    }
    for (std::size_t i = 0; i < n; ++i)
        if (cut[i] + cut[(i + 1) % n] >= length(ring[(i + 1) % n] - ring[i])) return std::nullopt;
    return offset_sides(ring, by_mm, sagitta_mm);
}

Ring traced(const Contour& contour, double sagitta_mm) {
    DRAWERCAST_DEMAND(!contour.core.empty() && sagitta_mm > 0, "an outline has a core and chords a sagitta");
    if (contour.core.size() < 3) return round_ended(contour.core, contour.round_mm, sagitta_mm);
    if (contour.round_mm == 0) return contour.core;
    return offset_sides(contour.core, contour.round_mm, sagitta_mm);
}

} // namespace drawercast::shape
