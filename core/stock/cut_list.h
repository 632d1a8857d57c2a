// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/shop.h"
#include "stock/cut_tree.h"
#include "stock/part.h"

#include <string>
#include <vector>

/// All parts of all drawers, laid on sheets and bars.
namespace drawercast::stock {

struct CutListIn {
    std::vector<Part> parts;
    std::vector<LengthPart> lengths;
    std::vector<job::Board> boards; ///< those the parts name, at least
    std::vector<job::Stiffener> stiffeners;
    std::vector<job::Tube> tubes;
    double kerf_mm = 3.2;
    double trim_mm = 5;
};

/// A panel as the sheet gives it: one part, or a strip that short parts are cut from afterwards.
struct Piece {
    std::vector<int> parts; ///< indices into CutListIn::parts, from the strip's end on
    double length_mm = 0;
    double width_mm = 0;
    bool strip = false;
};

struct BoardCut {
    job::Board board;
    std::vector<Piece> pieces;
    std::vector<SheetLayout> sheets; ///< pieces by index into `pieces`; origin inside the trim
    int least = 0;                   ///< no fewer sheets are possible
    std::vector<int> too_large;      ///< parts that no sheet gives
    int to_buy = 0;
    double price = 0;    ///< of these
    double used_mm2 = 0; ///< by pieces, over all sheets
};

struct BarCut {
    std::string stock;
    double bar_mm = 0;
    std::vector<std::vector<int>> bars; ///< indices into CutListIn::lengths, longest first
    int least = 0;
    bool proven = true;
    std::vector<int> too_long;
    int to_buy = 0;
    double price = 0;
};

struct CutList {
    std::vector<BoardCut> boards; ///< in the order the parts name them
    std::vector<BarCut> bars;
};

CutList cut_list_of(const CutListIn& in);

/// Parts of one board, short ones ganged: parts of one width that are shorter than the saw holds share a
/// strip. `longest_mm`: what a strip may measure.
std::vector<Piece> pieces_of(const std::vector<Part>& parts, const std::vector<int>& of_board, double kerf_mm,
                             double longest_mm);

} // namespace drawercast::stock
