// SPDX-License-Identifier: GPL-3.0-or-later
#include "outline/outline_acts.h"

#include "base/number.h"
#include "shape/segments.h"

#include <algorithm>
#include <cmath>

namespace drawercast::app::outline {

namespace {

Vec end_of(const Polygon& polygon, std::size_t side) {
    return polygon.corners[(side + 1) % polygon.corners.size()].at;
}

/// 1 where the corners are walked counter-clockwise (or enclose nothing), else −1: which side is outside.
double way_round(const Polygon& polygon) {
    shape::Ring ring;
    for (const auto& corner : polygon.corners) ring.push_back(corner.at);
    return shape::area(ring) < 0 ? -1 : 1;
}

/// Outward from the middle of a side, unit length.
Vec outward(const Polygon& polygon, std::size_t side) {
    const Vec along = end_of(polygon, side) - polygon.corners[side].at;
    const double long_mm = length(along);
    if (!(long_mm > 0)) return {};
    return Vec{along.y, -along.x} * (way_round(polygon) / long_mm);
}

constexpr int chords = 24; ///< of a drawn arc

} // namespace

Polygon with_corner_at(Polygon polygon, std::size_t corner, Vec at) {
    if (corner < polygon.corners.size()) polygon.corners[corner].at = grained_at(at);
    return polygon;
}

Polygon with_point_at(Polygon polygon, std::size_t corner, Vec at, double within_mm) {
    const std::size_t count = polygon.corners.size();
    if (corner >= count) return polygon;
    const auto before = polygon.corners;
    const Vec from = before[corner].at, by = at - from;
    for (const std::size_t step : {std::size_t{1}, count - 1}) // to either side of it
        for (std::size_t beside = (corner + step) % count; beside != corner;
             beside = (beside + step) % count) {
            if (length(before[beside].at - from) > within_mm) break;
            polygon.corners[beside].at = grained_at(before[beside].at + by);
        }
    return with_corner_at(std::move(polygon), corner, at);
}

Polygon with_corner_on_side(Polygon polygon, std::size_t side, Vec at) {
    if (side >= polygon.corners.size()) return polygon;
    const double whole = polygon.corners[side].sagitta_mm;
    double first = 0, second = 0;
    if (whole != 0) {
        // The height of a part of an arc: R·(1 − cos(half of the angle over it)).
        const Vec a = polygon.corners[side].at, b = end_of(polygon, side);
        const double chord = length(b - a);
        const double radius = (chord * chord / 4 + whole * whole) / (2 * std::abs(whole));
        const Vec center = (a + b) * 0.5 + outward(polygon, side) * (whole - std::copysign(radius, whole));
        const Vec ray = at - center;
        if (length(ray) > 0) at = center + ray * (radius / length(ray));
        const auto height = [&](Vec p, Vec q) {
            const double half = std::min(length(q - p) / 2, radius);
            return std::copysign(radius - std::sqrt(radius * radius - half * half), whole);
        };
        first = height(a, at);
        second = height(at, b);
    }
    polygon.corners[side].sagitta_mm = grained(first);
    polygon.corners.insert(polygon.corners.begin() + static_cast<std::ptrdiff_t>(side) + 1,
                           {grained_at(at), grained(second)});
    return polygon;
}

Polygon without_corner(Polygon polygon, std::size_t corner) {
    if (corner >= polygon.corners.size() || polygon.corners.size() <= 3) return polygon;
    const auto before = (corner + polygon.corners.size() - 1) % polygon.corners.size();
    polygon.corners[before].sagitta_mm = 0;
    polygon.corners.erase(polygon.corners.begin() + static_cast<std::ptrdiff_t>(corner));
    return polygon;
}

Polygon with_arc(Polygon polygon, std::size_t side, double sagitta_mm) {
    if (side < polygon.corners.size()) polygon.corners[side].sagitta_mm = grained(sagitta_mm);
    return polygon;
}

Polygon with_side_length(Polygon polygon, std::size_t side, double length_mm) {
    if (side >= polygon.corners.size() || !(length_mm > 0)) return polygon;
    const Vec from = polygon.corners[side].at;
    const Vec along = end_of(polygon, side) - from;
    const double now = length(along);
    if (!(now > 0)) return polygon;
    return with_corner_at(polygon, (side + 1) % polygon.corners.size(), from + along * (length_mm / now));
}

/// The order is turned about too, so that an outline walked counter-clockwise stays so; an arc belongs to the
/// corner it starts from, which is then its other end.
Polygon mirrored(const Polygon& polygon, Mirror way) {
    const Vec middle = box_of(polygon).center();
    Polygon result;
    const std::size_t n = polygon.corners.size();
    for (std::size_t i = n; i-- > 0;) {
        const Vec p = polygon.corners[i].at;
        const Vec there =
            way == Mirror::left_right ? Vec{2 * middle.x - p.x, p.y} : Vec{p.x, 2 * middle.y - p.y};
        result.corners.push_back({grained_at(there), polygon.corners[(i + n - 1) % n].sagitta_mm});
    }
    return result;
}

Polygon with_size(const Polygon& polygon, double width_mm, double height_mm) {
    const shape::Box box = box_of(polygon);
    if (!(width_mm > 0) || !(height_mm > 0) || !(box.width() > 0) || !(box.height() > 0)) return polygon;
    const Vec by{width_mm / box.width(), height_mm / box.height()};
    const Vec middle = box.center();
    Polygon result = polygon;
    for (auto& corner : result.corners)
        corner.at = shape::grained_at(
            {middle.x + (corner.at.x - middle.x) * by.x, middle.y + (corner.at.y - middle.y) * by.y});
    for (std::size_t i = 0; i < polygon.corners.size(); ++i) {
        const double before = length(end_of(polygon, i) - polygon.corners[i].at);
        const double now = length(end_of(result, i) - result.corners[i].at);
        if (before > 0) result.corners[i].sagitta_mm = grained(polygon.corners[i].sagitta_mm * now / before);
    }
    return result;
}

shape::Box box_of(const Polygon& polygon) {
    shape::Box box;
    for (const Vec p : drawn(polygon)) box.add(p);
    return box;
}

double sagitta_through(const Polygon& polygon, std::size_t side, Vec pulled, double straight_mm) {
    if (side >= polygon.corners.size()) return 0;
    const Vec a = polygon.corners[side].at, b = end_of(polygon, side);
    const double height = dot(pulled - (a + b) * 0.5, outward(polygon, side));
    if (std::abs(height) <= straight_mm) return 0;
    const double most = length(b - a) / 2; // a half circle; more turns back over its own ends
    return grained(std::clamp(height, -most, most));
}

Vec middle_of(const Polygon& polygon, std::size_t side) {
    return (polygon.corners[side].at + end_of(polygon, side)) * 0.5 +
           outward(polygon, side) * polygon.corners[side].sagitta_mm;
}

shape::Ring drawn(const Polygon& polygon) {
    shape::Ring ring;
    for (std::size_t i = 0; i < polygon.corners.size(); ++i) {
        const Vec a = polygon.corners[i].at, b = end_of(polygon, i);
        ring.push_back(a);
        const double s = polygon.corners[i].sagitta_mm;
        const double chord = length(b - a);
        if (s == 0 || !(chord > 0)) continue;
        const double radius = (chord * chord / 4 + s * s) / (2 * std::abs(s));
        const Vec center = (a + b) * 0.5 + outward(polygon, i) * (s - std::copysign(radius, s));
        const double angle = 4 * std::atan(2 * s / chord) * way_round(polygon);
        for (int k = 1; k < chords; ++k) {
            const double phi = angle * k / chords;
            ring.push_back(center + shape::Turn{std::cos(phi), std::sin(phi)}(a - center));
        }
    }
    return ring;
}

std::optional<double> radius_of(const Polygon& polygon, std::size_t side) {
    if (side >= polygon.corners.size() || polygon.corners[side].sagitta_mm == 0) return std::nullopt;
    const double s = std::abs(polygon.corners[side].sagitta_mm);
    const double chord = length(end_of(polygon, side) - polygon.corners[side].at);
    return (chord * chord / 4 + s * s) / (2 * s);
}

Vec on_step(Vec at, double step_mm) {
    if (!(step_mm > 0)) return grained_at(at);
    return shape::grained_at({std::round(at.x / step_mm) * step_mm, std::round(at.y / step_mm) * step_mm});
}

} // namespace drawercast::app::outline
