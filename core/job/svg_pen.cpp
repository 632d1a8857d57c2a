// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "job/svg_path.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::job {

namespace {

using shape::Vec;

/// An arc by its center (SVG 1.1, F.6.5).
struct Ellipse {
    Vec center;
    double rx = 0, ry = 0;
    shape::Turn turn;
    double from = 0, by = 0; ///< angles, radians

    Vec at(double part) const {
        const double t = from + by * part;
        return center + turn({rx * std::cos(t), ry * std::sin(t)});
    }
};

double angle(Vec a, Vec b) { return std::atan2(cross(a, b), dot(a, b)); }

Ellipse ellipse_of(Vec from, const SvgPen::Arc& arc, Vec to) {
    const auto [rx, ry, turn_deg, large, sweep] = arc;
    Ellipse e;
    e.turn = shape::Turn::of_degrees(turn_deg);
    const shape::Turn back{e.turn.cosine, -e.turn.sine};
    const Vec half = back((from - to) * 0.5);
    const double reach = half.x * half.x / (rx * rx) + half.y * half.y / (ry * ry);
    const double grown = std::sqrt(std::max(1.0, reach));
    e.rx = rx * grown;
    e.ry = ry * grown;
    const double over = std::max(0.0, 1 / std::max(reach, 1e-300) - 1);
    const double side = (large == sweep ? -1 : 1) * (reach >= 1 ? 0 : std::sqrt(over));
    const Vec middle{side * e.rx * half.y / e.ry, -side * e.ry * half.x / e.rx};
    e.center = e.turn(middle) + (from + to) * 0.5;
    const Vec start{(half.x - middle.x) / e.rx, (half.y - middle.y) / e.ry};
    const Vec end{(-half.x - middle.x) / e.rx, (-half.y - middle.y) / e.ry};
    e.from = angle({1, 0}, start);
    e.by = angle(start, end);
    if (sweep && e.by < 0) e.by += 2 * std::numbers::pi;
    if (!sweep && e.by > 0) e.by -= 2 * std::numbers::pi;
    return e;
}

/// Chords of an arc whose greatest radius is `radius`, so that none is further off than the tolerance.
std::size_t chords(double radius, double by) {
    if (radius <= svg_curve_mm) return 4;
    const double step = 2 * std::acos(1 - svg_curve_mm / radius);
    return static_cast<std::size_t>(std::clamp(std::ceil(std::abs(by) / step), 1.0, 6000.0));
}

} // namespace

void SvgPen::put(Vec to) {
    ++count_;
    if (!too_many()) corners_.push_back({to_mm_(to), 0});
    at_ = to;
}

void SvgPen::move(Vec to) {
    finish();
    start_ = at_ = to;
}

void SvgPen::line(Vec to) {
    if (corners_.empty()) put(at_);
    put(to);
}

/// As many equal parts as keep every chord within the tolerance: the second differences of the control points
/// bound how far a cubic is from its chords, by 6·max|Δ²|/8/n² (Taylor's remainder).
void SvgPen::cubic(Vec one, Vec two, Vec to) {
    if (corners_.empty()) put(at_);
    const Vec from = at_;
    const Vec p[] = {to_mm_(from), to_mm_(one), to_mm_(two), to_mm_(to)};
    const double bent = std::max(length(p[0] - p[1] * 2 + p[2]), length(p[1] - p[2] * 2 + p[3]));
    const double parts = std::clamp(std::ceil(std::sqrt(0.75 * bent / svg_curve_mm)), 1.0, 6000.0);
    for (double k = 1; k <= parts && !too_many(); ++k) {
        const double t = k / parts;
        const double u = 1 - t;
        put(k == parts
                ? to
                : from * (u * u * u) + one * (3 * u * u * t) + two * (3 * u * t * t) + to * (t * t * t));
    }
    at_ = to;
}

void SvgPen::arc(Arc arc, Vec to) {
    arc.rx = std::abs(arc.rx);
    arc.ry = std::abs(arc.ry);
    if (to == at_) return;
    if (arc.rx < 1e-9 || arc.ry < 1e-9) return line(to);
    if (corners_.empty()) put(at_);
    const Ellipse e = ellipse_of(at_, arc, to);
    const bool round = std::abs(e.rx - e.ry) <= 1e-9 * e.rx && to_mm_.keeps_angles();
    const double stretch = std::max(std::hypot(to_mm_.a, to_mm_.b), std::hypot(to_mm_.c, to_mm_.d));
    // Half turns at most: an arc of more is not told apart by its height from one of less in every reader.
    const auto parts = round ? static_cast<std::size_t>(std::ceil(std::abs(e.by) / (std::numbers::pi + 1e-9)))
                             : chords(std::max(e.rx, e.ry) * stretch * std::numbers::sqrt2, e.by);
    for (std::size_t k = 1; k <= parts && !too_many(); ++k) {
        if (round && !corners_.empty()) {
            const double sagitta = e.rx * std::sqrt(std::abs(to_mm_.determinant())) *
                                   (1 - std::cos(e.by / static_cast<double>(parts) / 2));
            corners_.back().left_mm = std::copysign(sagitta, e.by * to_mm_.determinant());
        }
        put(k == parts ? to : e.at(static_cast<double>(k) / static_cast<double>(parts)));
    }
    at_ = to;
}

void SvgPen::close() {
    finish();
    at_ = start_;
}

void SvgPen::finish() {
    auto drawn = std::move(corners_);
    corners_.clear();
    const auto same = [](Vec a, Vec b) { return length(a - b) <= 1e-6; };
    while (drawn.size() > 1 && same(drawn.front().at, drawn.back().at)) drawn.pop_back();
    double twice = 0; // signed area, arcs and all
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        const Vec a = drawn[i].at, b = drawn[(i + 1) % drawn.size()].at;
        twice += cross(a - drawn[0].at, b - drawn[0].at) + drawn[i].left_mm * length(b - a) * 4 / 3;
    }
    if (drawn.size() < 2 || std::abs(twice) < 1e-6) return;
    shape::Polygon polygon;
    shape::Ring ring;
    for (const auto& d : drawn) {
        polygon.corners.push_back({grained_at(d.at), grained(d.left_mm)});
        ring.push_back(polygon.corners.back().at);
    }
    // Which side is outside is told by the corners; two of them are on no side of each other.
    const double by_corners = drawn.size() > 2 ? area(ring) : 0;
    if (by_corners < 0 || (by_corners == 0 && twice < 0))
        for (auto& corner : polygon.corners) corner.sagitta_mm = grained(-corner.sagitta_mm);
    done_.push_back(std::move(polygon));
}

std::vector<shape::Polygon> SvgPen::take() {
    finish();
    return std::move(done_);
}

} // namespace drawercast::job
