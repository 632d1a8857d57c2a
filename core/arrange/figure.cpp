// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/figure.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace drawercast::arrange {

using shape::Vec;

double distance_to_segment_squared(Vec p, Vec a, Vec b) {
    const Vec along = b - a;
    const double squared = dot(along, along);
    const double t = squared > 0 ? std::clamp(dot(p - a, along) / squared, 0.0, 1.0) : 0;
    const Vec off = p - (a + along * t);
    return dot(off, off);
}

bool inside(const std::vector<Vec>& ring, Vec p) {
    bool in = false;
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        const Vec a = ring[i];
        const Vec b = ring[j];
        if ((a.y > p.y) != (b.y > p.y) && p.x < (b.x - a.x) * (p.y - a.y) / (b.y - a.y) + a.x) in = !in;
    }
    return in;
}

namespace {

constexpr int grid = 32; ///< samples each way for the first guess of a disc
constexpr std::size_t discs_at_most = 12;
constexpr double covered_enough = 0.9;

/// How large a disc about `p` may be: to the boundary and to the discs there are.
double room_at(const std::vector<Vec>& ring, const std::vector<Disc>& discs, Vec p) {
    if (!inside(ring, p)) return -1;
    double squared = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
        squared = std::min(squared, distance_to_segment_squared(p, ring[j], ring[i]));
    double room = std::sqrt(squared);
    for (const Disc& disc : discs) room = std::min(room, length(p - disc.center) - disc.radius);
    return room;
}

Disc largest_disc(const std::vector<Vec>& ring, const std::vector<Disc>& discs, const shape::Box& box) {
    Disc best{box.center(), -1};
    const auto look = [&](Vec p) {
        const double room = room_at(ring, discs, p);
        if (room <= best.radius) return false;
        best = {p, room};
        return true;
    };
    for (int i = 0; i < grid; ++i)
        for (int j = 0; j < grid; ++j)
            look({box.min.x + box.width() * (i + 0.5) / grid, box.min.y + box.height() * (j + 0.5) / grid});
    for (double step = std::max(box.width(), box.height()) / grid; step > 1e-4 * box.width();) {
        bool better = false;
        for (const Vec way : {Vec{1, 0}, Vec{-1, 0}, Vec{0, 1}, Vec{0, -1}})
            better = look(best.center + way * step) || better;
        if (!better) step /= 2;
    }
    return best;
}

std::vector<Disc> discs_in(const shape::Contour& outline) {
    const auto& core = outline.core;
    if (core.size() == 1) return {{core[0], 0}};
    std::vector<Disc> discs;
    if (core.size() == 2) {
        constexpr int count = 8;
        for (int i = 0; i <= count; ++i)
            discs.push_back({core[0] + (core[1] - core[0]) * (double(i) / count), 0});
        return discs;
    }
    const shape::Box box = shape::bounds(core);
    const double whole = std::abs(shape::area(core));
    double covered = 0;
    while (discs.size() < discs_at_most && covered < covered_enough * whole) {
        const Disc next = largest_disc(core, discs, box);
        if (next.radius <= 0 || (!discs.empty() && next.radius < 0.02 * discs[0].radius)) break;
        discs.push_back(next);
        covered += 3.141592653589793 * next.radius * next.radius;
    }
    if (discs.empty()) discs.push_back({core[0], 0});
    return discs;
}

TurnedPart turned_part(const Part& part, const std::vector<Disc>& discs, double turn_deg) {
    const auto turn = shape::Turn::of_degrees(turn_deg);
    TurnedPart out;
    out.round_mm = part.outline.round_mm;
    out.depth_mm = part.depth_mm;
    for (const Vec p : part.outline.core) {
        out.core.push_back(turn(p));
        out.box.add(out.core.back());
    }
    for (const Disc& disc : discs) out.discs.push_back({turn(disc.center), disc.radius});
    return out;
}

bool cross_or_near(Vec a, Vec b, Vec c, Vec d, double squared) {
    const double c_side = cross(b - a, c - a);
    const double d_side = cross(b - a, d - a);
    if ((c_side > 0) != (d_side > 0)) {
        const double a_side = cross(d - c, a - c);
        const double b_side = cross(d - c, b - c);
        if ((a_side > 0) != (b_side > 0)) return true;
    }
    return distance_to_segment_squared(a, c, d) < squared || distance_to_segment_squared(b, c, d) < squared ||
           distance_to_segment_squared(c, a, b) < squared || distance_to_segment_squared(d, a, b) < squared;
}

/// Sides of a core: a point has one of no length.
std::size_t sides(const std::vector<Vec>& core) { return core.size() == 2 ? 1 : core.size(); }

bool apart(Vec a, Vec b, const shape::Box& box) {
    return std::max(a.x, b.x) < box.min.x || std::min(a.x, b.x) > box.max.x ||
           std::max(a.y, b.y) < box.min.y || std::min(a.y, b.y) > box.max.y;
}

} // namespace

std::vector<TurnedFigure> turned(const Figure& figure) {
    std::vector<std::vector<Disc>> discs;
    for (const Part& part : figure.parts) discs.push_back(discs_in(part.outline));
    std::vector<TurnedFigure> out;
    for (const double turn_deg : figure.turns_deg) {
        TurnedFigure one;
        one.turn_deg = turn_deg;
        for (std::size_t i = 0; i < figure.parts.size(); ++i) {
            one.parts.push_back(turned_part(figure.parts[i], discs[i], turn_deg));
            one.box.add(one.parts.back().box.grown(one.parts.back().round_mm));
        }
        one.size = std::sqrt(std::max(one.box.width() * one.box.height(), 1e-12));
        out.push_back(std::move(one));
    }
    return out;
}

bool too_near(const TurnedPart& a, const TurnedPart& b, Vec by, double clear_mm) {
    const double clear = clear_mm + a.round_mm + b.round_mm;
    const shape::Box b_box{b.box.min + by, b.box.max + by};
    if (!shape::near(a.box, b_box, clear)) return false;
    for (const Disc& one : a.discs)
        for (const Disc& other : b.discs) {
            const Vec off = other.center + by - one.center;
            const double reach = one.radius + other.radius + clear;
            if (dot(off, off) < reach * reach * (1 - 1e-9)) return true;
        }
    const double squared = clear * clear;
    const shape::Box around = b_box.grown(clear);
    for (std::size_t i = 0; i < sides(a.core); ++i) {
        const Vec p = a.core[i];
        const Vec q = a.core[i + 1 == a.core.size() ? 0 : i + 1];
        if (apart(p, q, around)) continue;
        shape::Box side;
        side.add(p);
        side.add(q);
        side = side.grown(clear);
        for (std::size_t j = 0; j < sides(b.core); ++j) {
            const Vec r = b.core[j] + by;
            const Vec s = b.core[j + 1 == b.core.size() ? 0 : j + 1] + by;
            if (!apart(r, s, side) && cross_or_near(p, q, r, s, squared)) return true;
        }
    }
    return (a.core.size() > 2 && inside(a.core, b.core[0] + by)) ||
           (b.core.size() > 2 && inside(b.core, a.core[0] - by));
}

double overlap_weight(const TurnedPart& a, const TurnedPart& b, Vec by, double clear_mm, double soft_mm) {
    double sum = 0;
    for (const Disc& one : a.discs)
        for (const Disc& other : b.discs) {
            const double mine = one.radius + a.round_mm + clear_mm / 2;
            const double yours = other.radius + b.round_mm + clear_mm / 2;
            const double deep = mine + yours - length(other.center + by - one.center);
            sum +=
                (deep >= soft_mm ? deep : soft_mm * soft_mm / (2 * soft_mm - deep)) * std::min(mine, yours);
        }
    return sum;
}

} // namespace drawercast::arrange
