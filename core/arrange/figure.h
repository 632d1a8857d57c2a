// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <vector>

namespace drawercast::arrange {

/// A disc that lies within a core.
struct Disc {
    shape::Vec center;
    double radius = 0;
    bool operator==(const Disc&) const = default;
};

/// One hollow of what is arranged: what it keeps from its neighbors goes by its depth.
struct Part {
    shape::Contour outline; ///< about the figure's own origin
    double depth_mm = 0;
};

/// What is arranged, and the turns it may take, degrees counter-clockwise.
struct Figure {
    std::vector<Part> parts;
    std::vector<double> turns_deg{0};
};

/// Discs with their figures in rows of four, so that four pairs are weighed at once. What fills the last row
/// counts nothing.
struct DiscRows {
    std::vector<float> x, y, radius, counts;
    void add(const Disc& disc);
    void fill(); ///< up to whole rows; once, after the last disc
    bool operator==(const DiscRows&) const = default;
};

/// A part at one of its turns, ready to be asked about.
struct TurnedPart {
    std::vector<shape::Vec> core;
    std::vector<Disc> discs; ///< largest first; they stand for the part where an overlap is weighed
    DiscRows rows;           ///< the same, four at a time
    shape::Box box;          ///< of the core alone
    double round_mm = 0;
    double depth_mm = 0;
    bool operator==(const TurnedPart&) const = default;
};

struct TurnedFigure {
    std::vector<TurnedPart> parts;
    shape::Box box; ///< rounds included
    double turn_deg = 0;
    double size = 0; ///< square root of the box's area
};

/// Every turn of a figure. Each core is filled with discs, the largest that fits first (poles of
/// inaccessibility; a point or a segment takes discs without radius, its round does the rest). Outlines of
/// very many corners are made coarse (coarse.h), never smaller.
std::vector<TurnedFigure> turned(const Figure& figure);

/// That turned figure turned further about its origin.
TurnedFigure turned_by(const TurnedFigure& figure, double turn_deg);

/// Whether two parts come nearer than `clear_mm`, rounds counted; `by`: from a's origin to b's. Exact.
bool too_near(const TurnedPart& a, const TurnedPart& b, shape::Vec by, double clear_mm);

/// How badly two parts that are too near overlap: the sum over pairs of discs of how deep they stick in each
/// other, times the lesser radius; falls off smoothly where discs stand apart, so that there is always a way
/// that gets better. `soft_mm` > 0 is where the fall begins. Once the sum is over `enough`, any such number:
/// most places looked at are far worse than one known already. Single precision, as it is a measure alone.
double overlap_weight(const TurnedPart& a, const TurnedPart& b, shape::Vec by, double clear_mm,
                      double soft_mm, double enough);

double distance_to_segment_squared(shape::Vec p, shape::Vec a, shape::Vec b);

} // namespace drawercast::arrange
