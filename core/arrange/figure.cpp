// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/figure.h"

#include "arrange/coarse.h"
#include "shape/boxes.h"
#include "shape/segments.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
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

namespace {

constexpr int grid = 32; ///< samples each way for the first guess of a disc
constexpr std::size_t discs_at_most = 12;
constexpr double covered_enough = 0.9;
constexpr std::size_t row = 4;
constexpr std::size_t discs_asked_first = 5; ///< the largest overlap first; the sides decide anyway

/// How large a disc about `p` may be: to the boundary and to the discs there are.
double room_at(const std::vector<Vec>& ring, const std::vector<Disc>& discs, Vec p) {
    if (!shape::holds_half_open(ring, p)) return -1;
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

TurnedPart turned_part(const TurnedPart& part, const shape::Turn& turn) {
    TurnedPart out;
    out.round_mm = part.round_mm;
    out.depth_mm = part.depth_mm;
    for (const Vec p : part.core) {
        out.core.push_back(turn(p));
        out.box.add(out.core.back());
    }
    for (const Disc& disc : part.discs) {
        out.discs.push_back({turn(disc.center), disc.radius});
        out.rows.add(out.discs.back());
    }
    out.rows.fill();
    return out;
}

bool cross_or_near(Vec a, Vec b, Vec c, Vec d, double squared) {
    return shape::crossing(a, b, c, d) || distance_to_segment_squared(a, c, d) < squared ||
           distance_to_segment_squared(b, c, d) < squared || distance_to_segment_squared(c, a, b) < squared ||
           distance_to_segment_squared(d, a, b) < squared;
}

bool apart(Vec a, Vec b, const shape::Box& box) {
    return std::max(a.x, b.x) < box.min.x || std::min(a.x, b.x) > box.max.x ||
           std::max(a.y, b.y) < box.min.y || std::min(a.y, b.y) > box.max.y;
}

} // namespace

void DiscRows::add(const Disc& disc) {
    x.push_back(static_cast<float>(disc.center.x));
    y.push_back(static_cast<float>(disc.center.y));
    radius.push_back(static_cast<float>(disc.radius));
    counts.push_back(1);
}

void DiscRows::fill() {
    while (x.size() % row != 0) {
        x.push_back(0);
        y.push_back(0);
        radius.push_back(0);
        counts.push_back(0);
    }
}

std::vector<TurnedFigure> turned(const Figure& figure) {
    TurnedFigure plain;
    for (const Part& part : figure.parts) {
        const shape::Contour outline = coarse(part.outline);
        plain.parts.push_back({outline.core, discs_in(outline), {}, {}, outline.round_mm, part.depth_mm});
    }
    std::vector<TurnedFigure> out;
    for (const double turn_deg : figure.turns_deg) out.push_back(turned_by(plain, turn_deg));
    return out;
}

TurnedFigure turned_by(const TurnedFigure& figure, double turn_deg) {
    TurnedFigure out;
    out.turn_deg = figure.turn_deg + turn_deg;
    const auto turn = shape::Turn::of_degrees(turn_deg);
    for (const TurnedPart& part : figure.parts) {
        out.parts.push_back(turned_part(part, turn));
        out.box.add(out.parts.back().box.grown(part.round_mm));
    }
    out.size = std::sqrt(std::max(out.box.width() * out.box.height(), 1e-12));
    return out;
}

bool too_near(const TurnedPart& a, const TurnedPart& b, Vec by, double clear_mm) {
    const double clear = clear_mm + a.round_mm + b.round_mm;
    const shape::Box b_box = shape::moved(b.box, by);
    if (!shape::near(a.box, b_box, clear)) return false;
    const std::size_t mine = std::min(a.discs.size(), discs_asked_first);
    const std::size_t yours = std::min(b.discs.size(), discs_asked_first);
    for (std::size_t i = 0; i < mine; ++i)
        for (std::size_t j = 0; j < yours; ++j) {
            const Vec off = b.discs[j].center + by - a.discs[i].center;
            const double reach = a.discs[i].radius + b.discs[j].radius + clear;
            if (dot(off, off) < reach * reach * (1 - 1e-9)) return true;
        }
    const double squared = clear * clear;
    const shape::Box around = b_box.grown(clear);
    for (std::size_t i = 0; i < shape::sides_of(a.core); ++i) {
        const Vec p = a.core[i];
        const Vec q = shape::side_end(a.core, i);
        if (apart(p, q, around)) continue;
        shape::Box side;
        side.add(p);
        side.add(q);
        side = side.grown(clear);
        for (std::size_t j = 0; j < shape::sides_of(b.core); ++j) {
            const Vec r = b.core[j] + by;
            const Vec s = shape::side_end(b.core, j) + by;
            if (!apart(r, s, side) && cross_or_near(p, q, r, s, squared)) return true;
        }
    }
    return (a.core.size() > 2 && shape::holds_half_open(a.core, b.core[0] + by)) ||
           (b.core.size() > 2 && shape::holds_half_open(b.core, a.core[0] - by));
}

double overlap_weight(const TurnedPart& a, const TurnedPart& b, Vec by, double clear_mm, double soft_mm,
                      double enough) {
    const auto soft = static_cast<float>(soft_mm);
    const float softer = soft * soft;
    const auto more_a = static_cast<float>(a.round_mm + clear_mm / 2);
    const auto more_b = static_cast<float>(b.round_mm + clear_mm / 2);
    const DiscRows& theirs = b.rows;
    double sum = 0;
    for (const Disc& one : a.discs) {
        const auto x = static_cast<float>(one.center.x - by.x);
        const auto y = static_cast<float>(one.center.y - by.y);
        const float mine = static_cast<float>(one.radius) + more_a;
        std::array<float, row> sums{};
        for (std::size_t j = 0; j < theirs.x.size(); j += row)
            for (std::size_t k = 0; k < row; ++k) {
                const float dx = theirs.x[j + k] - x;
                const float dy = theirs.y[j + k] - y;
                const float yours = theirs.radius[j + k] + more_b;
                const float deep = mine + yours - std::sqrt(dx * dx + dy * dy);
                const float fall = softer / (soft + std::max(soft - deep, 0.0F));
                const float much = std::max(deep - soft, 0.0F) + fall;
                sums[k] += much * std::min(mine, yours) * theirs.counts[j + k];
            }
        sum += static_cast<double>((sums[0] + sums[1]) + (sums[2] + sums[3]));
        if (sum > enough) break;
    }
    return sum;
}

} // namespace drawercast::arrange
