// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/svg_transform.h"
#include "shape/contour.h"

#include <string_view>
#include <vector>

namespace drawercast::job {

/// How far a curve may lie from the chords it becomes, mm.
inline constexpr double svg_curve_mm = 0.01;

/// A pen that draws free outlines: it is told a path in a drawing's own units and puts down corners in mm.
/// Circles stay arcs where `to_mm` keeps angles; curves become chords.
class SvgPen {
  public:
    explicit SvgPen(const SvgMap& to_mm) : to_mm_(to_mm) {}

    void move(shape::Vec to);
    void line(shape::Vec to);
    void cubic(shape::Vec one, shape::Vec two, shape::Vec to);
    /// SVG 1.1, F.6: radii grow where the ends do not reach.
    struct Arc {
        double rx = 0;
        double ry = 0;
        double turn_deg = 0;
        bool large = false; ///< of the two ways round the longer one
        bool sweep = true;  ///< toward growing angles
    };
    void arc(Arc arc, shape::Vec to);
    void close(); ///< ends the outline; the next one begins where it began
    shape::Vec at() const { return at_; }
    bool too_many() const { return count_ > 5000; }

    /// Those with an area, either way round as drawn.
    std::vector<shape::Polygon> take();

  private:
    struct Drawn {
        shape::Vec at;
        double left_mm = 0; ///< height of the arc to the next corner, > 0 where it turns left
    };
    void put(shape::Vec to);
    void finish();

    SvgMap to_mm_;
    shape::Vec at_, start_;
    std::vector<Drawn> corners_;
    std::vector<shape::Polygon> done_;
    std::size_t count_ = 0;
};

/// The `d` attribute (SVG 1.1, 8.3), drawn with the pen. A fault says at which character.
Expected<void> svg_path(std::string_view d, SvgPen& pen);

} // namespace drawercast::job
