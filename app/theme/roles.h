// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a line, an area or a word is for. Sheets speak in these; a Theme and a medium make pens, colors and
/// sizes of them.
namespace drawercast::theme {

/// Where a sheet is seen: pixels at arm's length, or millimeters of paper.
enum class Medium { screen, paper };

enum class LineRole {
    cavity_edge, ///< drawer, cavity, plate: what holds the rest
    pocket_edge, ///< pockets and blocks
    trace,       ///< on 1:1 templates: the true edge is the middle of the line
    thin,        ///< dimensions, leaders, steps inside a pocket, rulers
    soft,        ///< the same in second ink: zones, tile frames
    under,       ///< below something else; where a moved thing was
    clay,        ///< edge of the clay fillets
    center,      ///< center marks, symmetry, joints between tiles
    neighbor,    ///< obstruction, box wall
    guide,       ///< live: snapping, construction; never printed
    mend_end,    ///< the two edges a mend lies between
    mend_line,   ///< its arrows and leader
    look_end,
    look_line,
    border,     ///< of a printed page
    title_line, ///< top of the title block
    wall_hatch, ///< hatching of the drawer's wall and obstructions
    wood_hatch, ///< hatching of blocks and fillers
    contour,    ///< line of equal lift or filling
    mend_hatch, ///< hatching of what two pockets share
    rule,       ///< between rows, decor
};

enum class WashRole { paper, face, depth, magnitude, wall, wood, red_soft, ochre_soft, ink };

/// A filled area's color. `share`: of the ladder's whole; only read for the ladders, depth and
/// magnitude.
struct Wash {
    WashRole role = WashRole::paper;
    double share = 0;
    bool operator==(const Wash&) const = default;
};

enum class TextRole {
    name,           ///< of a pocket or block
    name_small,     ///< the same where room is scarce
    key,            ///< letter that stands for a name
    key_small,      ///< the same in the smallest pockets
    depth,          ///< depths and heights
    figure,         ///< dimensions
    caption,        ///< remarks on a drawing
    zone,           ///< letters and figures in the drawer's wall
    edge_word,      ///< FRONT, BACK, LEFT, RIGHT
    plate,          ///< words of a check
    badge,          ///< a check's number
    template_name,  ///< names and heights of blocks on 1:1 templates, 3.5 mm capitals
    template_small, ///< the same in small blocks
};

} // namespace drawercast::theme
