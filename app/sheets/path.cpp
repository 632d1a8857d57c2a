// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/path.h"

#include "shape/segments.h"
#include "shape/trace.h"

#include <cmath>
#include <numbers>

namespace drawercast::sheets {

namespace {

using std::numbers::pi;

/// Arc around `center` from angle `from` over `turn` (radians, ≥ 0) in pieces of at most a quarter.
void add_arc(Strand& strand, Vec center, double radius, double from, double turn) {
    const int pieces = std::max(1, static_cast<int>(std::ceil(turn / (pi / 2) - 1e-9)));
    for (int i = 1; i <= pieces; ++i) {
        const double angle = from + turn * i / pieces;
        strand.pieces.push_back({center + Vec{std::cos(angle), std::sin(angle)} * radius, radius});
    }
}

/// The offset of a convex core with two or more vertices: a side, an arc, a side, …
Strand rounded(const std::vector<Vec>& core, double radius) {
    constexpr double straight = 1e-9; // a turn below this is none
    Strand strand;
    strand.closed = true;
    const std::size_t n = core.size();
    const auto outward = [&](std::size_t i) { // unit, right of the side that starts at i
        const Vec d = core[(i + 1) % n] - core[i % n];
        return Vec{d.y, -d.x} * (1 / length(d));
    };
    for (std::size_t i = 0; i < n; ++i) {
        const Vec side = outward(i), next = outward(i + 1), corner = core[(i + 1) % n];
        if (i == 0)
            strand.start = core[i] + side * radius;
        else
            strand.pieces.back().to = core[i] + side * radius; // where the arc before ends, exactly
        strand.pieces.push_back({corner + side * radius, 0});
        const double turn = std::abs(std::atan2(cross(side, next), dot(side, next)));
        if (turn > straight) add_arc(strand, corner, radius, std::atan2(side.y, side.x), turn);
    }
    strand.pieces.back().to = strand.start;
    return strand;
}

} // namespace

Path path_of(const shape::Contour& contour) {
    const auto& core = contour.core;
    if (core.size() == 1) return circle(core.front(), contour.round_mm);
    if (contour.round_mm > 0 && shape::convex(contour)) return {{rounded(core, contour.round_mm)}};
    return path_of(shape::traced(contour));
}

Path path_of(const shape::Ring& ring) { return polygon(ring); }

Path path_of(const shape::Region& region) {
    Path path;
    for (const auto& patch : region.patches) {
        path = joined(std::move(path), polygon(patch.outer));
        for (const auto& hole : patch.holes) path = joined(std::move(path), polygon(hole));
    }
    return path;
}

Path path_of(const Box& box) {
    return polygon({box.min, {box.max.x, box.min.y}, box.max, {box.min.x, box.max.y}});
}

Path line(Vec from, Vec to) { return {{{from, {{to, 0}}, false}}}; }

Path polyline(const std::vector<Vec>& points) {
    Strand strand;
    if (points.empty()) return {};
    strand.start = points.front();
    for (std::size_t i = 1; i < points.size(); ++i) strand.pieces.push_back({points[i], 0});
    return {{std::move(strand)}};
}

Path polygon(const std::vector<Vec>& points) {
    Path path = polyline(points);
    for (Strand& strand : path.strands) strand.closed = true;
    return path;
}

Path circle(Vec center, double radius) {
    Strand strand;
    strand.closed = true;
    strand.start = center + Vec{radius, 0};
    for (const Vec d : {Vec{0, 1}, Vec{-1, 0}, Vec{0, -1}, Vec{1, 0}})
        strand.pieces.push_back({center + d * radius, radius});
    return {{std::move(strand)}};
}

Path joined(Path a, const Path& b) {
    a.strands.insert(a.strands.end(), b.strands.begin(), b.strands.end());
    return a;
}

Vec arc_center(Vec from, const Piece& piece) {
    const Vec chord = piece.to - from;
    const double half = length(chord) / 2;
    const double r = std::abs(piece.radius);
    const double apothem = std::sqrt(std::max(0.0, r * r - half * half));
    const Vec left = half > 0 ? Vec{-chord.y, chord.x} * (0.5 / half) : Vec{};
    const double side = piece.radius > 0 ? 1 : -1;
    return from + chord * 0.5 + left * (side * apothem);
}

namespace {

/// Hands on the strand's points in turn, of an arc enough that its chords deviate at most `sagitta`.
template <class Take>
void walk(const Strand& strand, double sagitta, Take take) {
    Vec from = strand.start;
    take(from);
    for (const Piece& piece : strand.pieces) {
        if (piece.radius != 0) {
            const Vec center = arc_center(from, piece);
            const double start = std::atan2(from.y - center.y, from.x - center.x);
            double turn = std::atan2(piece.to.y - center.y, piece.to.x - center.x) - start;
            if (piece.radius > 0 && turn < 0) turn += 2 * pi;
            if (piece.radius < 0 && turn > 0) turn -= 2 * pi;
            const double r = std::abs(piece.radius);
            const auto n = shape::chords_for(std::abs(turn), r, sagitta);
            for (std::size_t i = 1; i < n; ++i) {
                const double angle = start + turn * static_cast<double>(i) / static_cast<double>(n);
                take(center + Vec{std::cos(angle), std::sin(angle)} * r);
            }
        }
        take(piece.to);
        from = piece.to;
    }
}

} // namespace

Box bounds(const Path& path) {
    Box box;
    for (const Strand& strand : path.strands) walk(strand, 0.01, [&](Vec p) { box.add(p); });
    return box;
}

std::vector<shape::Ring> chords(const Path& path, double sagitta) {
    std::vector<shape::Ring> rings;
    for (const Strand& strand : path.strands) {
        shape::Ring ring;
        walk(strand, sagitta, [&](Vec p) { ring.push_back(p); });
        rings.push_back(std::move(ring));
    }
    return rings;
}

bool inside(const std::vector<shape::Ring>& rings, Vec p) {
    bool in = false;
    for (const auto& ring : rings) in ^= shape::holds_half_open(ring, p);
    return in;
}

} // namespace drawercast::sheets
