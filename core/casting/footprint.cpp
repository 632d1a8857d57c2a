// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/footprint.h"

#include "shape/trace.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace drawercast::casting {
namespace {

using shape::Ring;
using shape::Vec;

constexpr double straight = 1e-9; // radians: a turn that is none
constexpr double slight = 0.05;   // one that a single chord does justice to
constexpr double pi = std::numbers::pi;

int chords_for(double angle, double radius, double sagitta_mm) {
    const double step = 2 * std::acos(std::max(0.5, 1 - sagitta_mm / radius));
    const int least = angle > slight ? 2 : 1; // from two on, their area can be made the arc's
    return std::max(least, static_cast<int>(std::ceil(angle / step - 1e-9)));
}

/// Radius of the inner corners of an arc's chords, whose ends stay on the arc, for the fan to have the
/// sector's area: (m − 2)·ρ² sin δ + 2·R·ρ sin δ = R²·angle.
double even_radius(double radius, double angle, int chords) {
    const double sine = std::sin(angle / chords);
    const double inner = chords - 2;
    if (chords == 2) return radius * angle / (2 * sine);
    return radius * (std::sqrt(1 + inner * angle / sine) - 1) / inner;
}

/// From `center + radius·normal` through `angle`, both ends included.
void add_arc(Ring& path, Vec center, Vec normal, double radius, double angle, double sagitta_mm) {
    const int chords = chords_for(angle, radius, sagitta_mm);
    const double even = chords > 1 ? even_radius(radius, angle, chords) : radius;
    for (int k = 0; k <= chords; ++k) {
        const double phi = angle * k / chords;
        const shape::Turn turn{std::cos(phi), std::sin(phi)};
        path.push_back(center + turn(normal) * (k == 0 || k == chords ? radius : even));
    }
}

Ring circle(Vec center, double radius, double sagitta_mm) {
    const int chords = std::max(6, chords_for(2 * pi, radius, sagitta_mm));
    const double step = 2 * pi / chords;
    const double even = radius * std::sqrt(step / std::sin(step));
    Ring path;
    for (int k = 0; k < chords; ++k)
        path.push_back(center + Vec{std::cos(k * step), std::sin(k * step)} * even);
    return path;
}

/// A corner of an outline with the outward normals of its sides and the shorter one's length.
struct Corner {
    Vec at;
    Vec before;
    Vec after;
    double shorter_mm = 0;
};

void add_corner(Ring& path, const Corner& corner, double by, double sagitta_mm) {
    const double turn = std::atan2(cross(corner.before, corner.after), dot(corner.before, corner.after));
    if (turn > straight) return add_arc(path, corner.at, corner.before, by, turn, sagitta_mm);
    const double setback = by * std::tan(-turn / 2);
    if (turn > -straight) {
        path.push_back(corner.at + corner.before * by);
    } else if (2 * setback <= corner.shorter_mm) {
        const Vec middle = corner.before + corner.after;
        path.push_back(corner.at + middle * (2 * by / dot(middle, middle)));
    } else {
        path.push_back(corner.at + corner.before * by);
        path.push_back(corner.at);
        path.push_back(corner.at + corner.after * by);
    }
}

} // namespace

void Footprint::add(Ring path) {
    box.add(shape::bounds(path));
    paths.push_back(std::move(path));
}

Ring path_around(const shape::Contour& contour, double by_mm, double sagitta_mm) {
    const Ring& core = contour.core;
    const double by = contour.round_mm + by_mm;
    if (core.size() == 1) return circle(core[0], by, sagitta_mm);
    if (by == 0) return core;
    Ring path;
    if (core.size() == 2) {
        const Vec right = shape::outward(core[0], core[1]);
        add_arc(path, core[1], right, by, pi, sagitta_mm);
        add_arc(path, core[0], right * -1, by, pi, sagitta_mm);
        return path;
    }
    const std::size_t n = core.size();
    Vec before = shape::outward(core[n - 1], core[0]);
    double before_mm = length(core[0] - core[n - 1]);
    for (std::size_t i = 0; i < n; ++i) {
        const Vec next = core[(i + 1) % n];
        const Vec after = shape::outward(core[i], next);
        const double after_mm = length(next - core[i]);
        add_corner(path, {core[i], before, after, std::min(before_mm, after_mm)}, by, sagitta_mm);
        before = after;
        before_mm = after_mm;
    }
    return path;
}

} // namespace drawercast::casting
