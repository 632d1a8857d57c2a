// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <optional>

/// What a maker does to a free outline, as pure functions from an outline to the next one. A side is named by
/// the corner it starts from. Corners are grained; numbers of corners that are not there change nothing.
namespace drawercast::app::outline {

using shape::Polygon;
using shape::Vec;

Polygon with_corner_at(Polygon polygon, std::size_t corner, Vec at);
/// A new corner on that side. The parts of an arc keep its circle.
Polygon with_corner_on_side(Polygon polygon, std::size_t side, Vec at);
/// Unchanged where fewer than three corners would be left.
Polygon without_corner(Polygon polygon, std::size_t corner);
/// The same, and those beside it that lie that near to it go along: what a hand sees as one point moves as
/// one.
Polygon with_point_at(Polygon polygon, std::size_t corner, Vec at, double within_mm);
Polygon with_arc(Polygon polygon, std::size_t side, double sagitta_mm);
/// The side's end moves along it until it is that long; its arc keeps its height. 0 and less change nothing.
Polygon with_side_length(Polygon polygon, std::size_t side, double length_mm);

enum class Mirror { left_right, front_back };
/// About the middle of the outline's box; still walked around the same way.
Polygon mirrored(const Polygon& polygon, Mirror way);
/// Stretched about its box's middle to that width and height; arcs keep their share of the chord.
Polygon with_size(const Polygon& polygon, double width_mm, double height_mm);

/// The box around the corners and arcs.
shape::Box box_of(const Polygon& polygon);
/// Height of the arc that starts at this side and passes the point that the maker pulls; 0 within `straight`.
double sagitta_through(const Polygon& polygon, std::size_t side, Vec pulled, double straight_mm);
/// The middle of the side, on its arc.
Vec middle_of(const Polygon& polygon, std::size_t side);
/// The whole line around, arcs as chords, ready to draw; corners alone where it crosses itself.
shape::Ring drawn(const Polygon& polygon);
/// Of a side's arc; nothing where it is straight.
std::optional<double> radius_of(const Polygon& polygon, std::size_t side);
/// On a grid of that step; as it is where the step is 0.
Vec on_step(Vec at, double step_mm);

} // namespace drawercast::app::outline
