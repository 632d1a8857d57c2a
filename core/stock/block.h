// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/bodies.h"
#include "job/shop.h"
#include "shape/contour.h"
#include "stock/part.h"
#include "stock/stack.h"
#include "stock/tubes.h"

#include <optional>
#include <string>
#include <vector>

/// A block of the pattern board made from boards and tubes.
namespace drawercast::stock {

/// What holds a piece of wood from below, as the pattern board has it.
struct Held {
    int screws = 2;
    double diameter_mm = 4;
    int pins = 0;
    bool operator==(const Held&) const = default;
};

/// One body as it is to stand, sealed, in the block's own plane; mold sizes.
struct BodyIn {
    shape::Contour outline;
    double height_mm = 0;                 ///< over the board, the film off already
    std::optional<double> radius_mm = {}; ///< of a lying round, sealed
    double axis_mm = 0;                   ///< of a lying round: height of its axis, < 0 below the board
    bool notch = false;
    bool through = false;        ///< reaches the plate: made to exactly that height
    std::vector<Held> held = {}; ///< of its pieces; one that is not named has two screws
    bool operator==(const BodyIn&) const = default;
};

struct BlockIn {
    std::string drawer;
    std::string subject; ///< "i1#1"
    std::string name;
    int number = 0; ///< on the pattern board
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

using casting::Rest;

struct Body {
    std::string label; ///< "7a"
    int of = 0;        ///< which of the bodies asked for
    int piece = 0;     ///< which of that one's pieces
    Make make = Make::stack;
    Rest rest = Rest::on_board;
    int other = -1;       ///< the body it stands on or butts
    Panel panel;          ///< as sawn
    double height_mm = 0; ///< of this body alone, as made
    double top_mm = 0;    ///< its top over the board, as made
    StackToHeight stack;  ///< of the riser where half_tube; no boards where the tube lies on the base itself
    std::vector<std::string> layers; ///< names of the boards, bottom first
    std::optional<TubeUse> tube;
    double tube_mm = 0;             ///< length of the tube
    int ends = 0;                   ///< discs in or at the ends of a tube
    Held held{0, 4, 0};             ///< from below; no screws: glued as well; neither: glued alone
    std::optional<double> screw_mm; ///< length through the base; absent: no screws
    std::optional<double> pin_mm;   ///< the same of the pins
    bool operator==(const Body&) const = default;
};

struct BlockByStock {
    std::string drawer;
    std::string subject;
    std::string name;
    int number = 0;
    std::vector<Body> bodies;
    std::vector<Part> parts;
    std::vector<LengthPart> tubes;
    double feet_mm = 0;       ///< outline at the board, to be sealed and clayed
    double glue_mm2 = 0;      ///< between layers
    double surface_mm2 = 0;   ///< tops and sides, to be sealed and released
    double end_grain_mm2 = 0; ///< of these the raw edges of boards
    bool operator==(const BlockByStock&) const = default;
};

/// Bodies meet as casting::meetings_of() has them. Where a body is too low for its screws it is held by pins
/// in their places.
BlockByStock block_by_stock(const BlockIn& in, const BlockShop& shop);

} // namespace drawercast::stock
