// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"
#include "shape/region.h"

#include <vector>

namespace drawercast::sheets {

using shape::Box;
using shape::Vec;

/// One piece of a line: straight to `to`, or an arc of at most a quarter turn. `radius` > 0 turns from x
/// toward y (to the left where y points up), < 0 the other way, 0 is straight.
struct Piece {
    Vec to;
    double radius = 0;
    bool operator==(const Piece&) const = default;
};

struct Strand {
    Vec start;
    std::vector<Piece> pieces;
    bool closed = false;
    bool operator==(const Strand&) const = default;
};

/// Lines and outlines with true arcs, in any plane; several strands are filled by the even-odd rule.
struct Path {
    std::vector<Strand> strands;
    bool operator==(const Path&) const = default;
    bool empty() const { return strands.empty(); }
};

/// The outline with its true arcs where the core is convex, else its traced ring.
Path path_of(const shape::Contour& contour);
Path path_of(const shape::Ring& ring);
Path path_of(const shape::Region& region);
Path path_of(const Box& box);

Path line(Vec from, Vec to);
Path polyline(const std::vector<Vec>& points);
Path polygon(const std::vector<Vec>& points);
Path circle(Vec center, double radius);

/// Both paths' strands in one.
Path joined(Path a, const Path& b);

/// Center of a piece that is an arc and starts at `from`.
Vec arc_center(Vec from, const Piece& piece);

/// Box of all ends and, for arcs, of their whole bulge (at most a little large).
Box bounds(const Path& path);

/// The path's points, arcs as chords within `sagitta`: for hit tests, hatching and finding room.
std::vector<shape::Ring> chords(const Path& path, double sagitta);

/// Whether `p` is inside by the even-odd rule.
bool inside(const std::vector<shape::Ring>& rings, Vec p);

} // namespace drawercast::sheets
