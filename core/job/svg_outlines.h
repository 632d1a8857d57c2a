// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "shape/contour.h"

#include <string>
#include <string_view>
#include <vector>

namespace drawercast::job {

/// One closed outline of a drawing, in mm with y up, about the middle of its box.
struct SvgOutline {
    std::string name; ///< its id, else its element
    Phrase spot;      ///< "line 4, column 3"
    shape::Polygon polygon;
    shape::Vec at{}; ///< where that middle lies in the drawing, mm, y up
};

struct SvgOutlines {
    std::vector<SvgOutline> outlines; ///< by area, largest first
    std::vector<Phrase> notes;        ///< what was taken another way than drawn, or left out
    bool sized = false;               ///< the drawing says how large it is in mm, in or the like
};

/// The closed outlines of a drawing (SVG 1.1): paths, rectangles, circles, ellipses, polygons and polylines,
/// through groups and transforms. Circles stay arcs where they are still round in mm, all other curves become
/// chords within 0.01 mm. Sizes by width, height and viewBox; where none is said, 96 units are one inch
/// (CSS 2.1, 4.3.2), which is noted. Refused with the place: what is no SVG, entities of its own, unreadable
/// numbers, transforms and paths, over 8 MB, over 300 outlines, over 5000 corners each.
Expected<SvgOutlines> svg_outlines(std::string_view text);

} // namespace drawercast::job
