// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/number.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace drawercast::shape {

/// A point or a displacement in some plane, mm. Which plane is said by the type around it (frame.h).
struct Vec {
    double x = 0;
    double y = 0;
    bool operator==(const Vec&) const = default;
};

constexpr Vec operator+(Vec a, Vec b) { return {a.x + b.x, a.y + b.y}; }
constexpr Vec operator-(Vec a, Vec b) { return {a.x - b.x, a.y - b.y}; }
constexpr Vec operator*(Vec a, double s) { return {a.x * s, a.y * s}; }
constexpr double dot(Vec a, Vec b) { return a.x * b.x + a.y * b.y; }
/// z of the cross product: > 0 where b lies counter-clockwise of a.
constexpr double cross(Vec a, Vec b) { return a.x * b.y - a.y * b.x; }
inline double length(Vec a) { return std::sqrt(dot(a, a)); }
/// Both coordinates in the grain in which lengths enter a job.
inline Vec grained_at(Vec p) { return {grained(p.x), grained(p.y)}; }

/// An upright box, mm; empty (min > max) until something was put in.
struct Box {
    Vec min{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
    Vec max{-std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
    bool operator==(const Box&) const = default;

    bool empty() const { return min.x > max.x || min.y > max.y; }
    double width() const { return max.x - min.x; }
    double height() const { return max.y - min.y; }
    Vec center() const { return {(min.x + max.x) / 2, (min.y + max.y) / 2}; }
    void add(Vec p) {
        min = {std::min(min.x, p.x), std::min(min.y, p.y)};
        max = {std::max(max.x, p.x), std::max(max.y, p.y)};
    }
    void add(const Box& other) {
        if (other.empty()) return;
        add(other.min);
        add(other.max);
    }
    Box grown(double by) const { return {{min.x - by, min.y - by}, {max.x + by, max.y + by}}; }
};

/// Whether the boxes come within `within` mm of each other in both directions (touching counts).
constexpr bool near(const Box& a, const Box& b, double within = 0) {
    return a.min.x - within <= b.max.x && b.min.x - within <= a.max.x && a.min.y - within <= b.max.y &&
           b.min.y - within <= a.max.y;
}

/// What two boxes share; empty where that is nothing.
constexpr Box shared_box(const Box& a, const Box& b) {
    return {{std::max(a.min.x, b.min.x), std::max(a.min.y, b.min.y)},
            {std::min(a.max.x, b.max.x), std::min(a.max.y, b.max.y)}};
}

/// Where something stands: turned counter-clockwise about its own origin, which is then put at `at`.
struct Pose {
    Vec at;
    double turn_deg = 0;
    bool operator==(const Pose&) const = default;
};

/// Sine and cosine of a turn, exact (0, ±1) at whole quarter turns, so that upright shapes stay upright.
struct Turn {
    double cosine = 1;
    double sine = 0;
    static Turn of_degrees(double degrees);
    Vec operator()(Vec p) const { return {cosine * p.x - sine * p.y, sine * p.x + cosine * p.y}; }
};

/// The point `p` of a thing's own plane where the thing stands at `pose`.
inline Vec placed(Vec p, const Pose& pose) { return Turn::of_degrees(pose.turn_deg)(p) + pose.at; }

} // namespace drawercast::shape
