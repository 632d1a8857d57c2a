// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <string>
#include <vector>

/// What a cut list is made of. Lengths mm, as sawn.
namespace drawercast::stock {

enum class Role { base, wall, plate, stiffener, filler, block, disc, end, riser, tube, half_tube };

/// How a part gets its outline after it has been sawn to a rectangle.
enum class Finish {
    rectangle, ///< it stays one
    disc,      ///< sawn round
    traced,    ///< sawn along the template
};

struct Part {           ///< from a board
    std::string label;  ///< unique in the job: "d1 base", "d1 7a.2"
    std::string drawer; ///< id
    int block = 0;      ///< number on the pattern board; 0: not of a block
    Role role = Role::block;
    std::string board;
    double length_mm = 0; ///< the longer side of the rectangle
    double width_mm = 0;
    double thickness_mm = 0; ///< of the board
    Finish finish = Finish::rectangle;
    bool operator==(const Part&) const = default;
};

struct LengthPart { ///< from a bar or a tube
    std::string label;
    std::string drawer;
    int block = 0;
    Role role = Role::stiffener;
    std::string stock;
    double length_mm = 0;
    bool operator==(const LengthPart&) const = default;
};

struct ScrewUse {
    double diameter_mm = 4;
    double length_mm = 0;
    int count = 0;
    bool operator==(const ScrewUse&) const = default;
};

/// Adds to the screws of that size, sorted by size.
void add_screws(std::vector<ScrewUse>& screws, const ScrewUse& more);

/// A rectangle that holds an outline, its sides along one of the outline's own: the one of least area.
struct Panel {
    double length_mm = 0; ///< ≥ width
    double width_mm = 0;
    bool operator==(const Panel&) const = default;
};
Panel panel_of(const shape::Contour& contour);
Panel panel_of(const shape::Ring& ring);

} // namespace drawercast::stock
