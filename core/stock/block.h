// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "shape/contour.h"
#include "stock/part.h"
#include "stock/stack.h"
#include "stock/tubes.h"

#include <optional>
#include <string>
#include <vector>

/// A block of the pattern board made from boards and tubes.
namespace drawercast::stock {

/// One body as it is to stand, sealed, in the block's own plane; mold sizes.
struct BodyIn {
    shape::Contour outline;
    double height_mm = 0;                 ///< over the board, the film off already
    std::optional<double> radius_mm = {}; ///< of a lying round, sealed
    double axis_mm = 0;                   ///< of a lying round: height of its axis, < 0 below the board
    bool notch = false;
    bool operator==(const BodyIn&) const = default;
};

struct BlockIn {
    std::string drawer;
    std::string subject; ///< "i1#1"
    std::string name;
    int number = 0; ///< on the pattern board
    int screws = 2;
    bool pin = false;
    std::vector<BodyIn> bodies;
    bool operator==(const BlockIn&) const = default;
};

/// What a block may be made of.
struct BlockShop {
    std::vector<job::Board> boards; ///< not empty
    std::vector<job::Tube> tubes;
    job::Board base; ///< screws come through it
    double saw_step_mm = 0.5;
    double film_mm = 0.1; ///< taken off each side
};

enum class Make {
    stack,     ///< boards glued flat, then cut to the outline
    discs,     ///< the same for a circle: sawn round
    tube,      ///< a standing tube with a disc in each end
    half_tube, ///< half a tube lying on a riser
    shaped,    ///< a stack planed round: no tube is near
};

enum class Rest {
    on_board, ///< stands on the base
    on_body,  ///< stands on another body
    butts,    ///< stands on the base, cut away where another body stands
};

struct Body {
    std::string label; ///< "7a"
    int of = 0;        ///< which of the bodies asked for
    Make make = Make::stack;
    Rest rest = Rest::on_board;
    int other = -1;       ///< the body it stands on or butts
    Panel panel;          ///< as sawn
    double height_mm = 0; ///< of this body alone, as made
    double top_mm = 0;    ///< its top over the board, as made
    StackToHeight stack;  ///< of the riser where half_tube; no boards where the tube lies on the base itself
    std::vector<std::string> layers; ///< names of the boards, bottom first
    std::optional<TubeUse> tube;
    double tube_mm = 0; ///< length of the tube
    int ends = 0;       ///< discs in or at the ends of a tube
    bool operator==(const Body&) const = default;
};

struct BlockByStock {
    std::string drawer;
    std::string subject;
    std::string name;
    int number = 0;
    std::vector<Body> bodies;
    std::optional<double> screw_mm; ///< length through the base; absent: too low, glued
    int screws = 0;
    bool pin = false;
    std::vector<Part> parts;
    std::vector<LengthPart> tubes;
    double feet_mm = 0;       ///< outline at the board, to be sealed and clayed
    double glue_mm2 = 0;      ///< between layers
    double surface_mm2 = 0;   ///< tops and sides, to be sealed and released
    double end_grain_mm2 = 0; ///< of these the raw edges of boards
    bool operator==(const BlockByStock&) const = default;
};

/// Bodies that lie within a lower one stand on it; those that overlap butt the highest, which is whole.
BlockByStock block_by_stock(const BlockIn& in, const BlockShop& shop);

} // namespace drawercast::stock
