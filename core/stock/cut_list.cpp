// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/cut_list.h"

#include "base/contains.h"
#include "base/demand.h"
#include "stock/lengths.h"
#include "stock/sheets.h"

#include <algorithm>
#include <optional>

namespace drawercast::stock {

namespace {

/// The names in the order they first come up.
template <class Parts, class Name>
std::vector<std::string> names_in(const Parts& parts, Name name) {
    std::vector<std::string> names;
    for (const auto& part : parts)
        if (!contains(names, name(part))) names.push_back(name(part));
    return names;
}

bool fits(const Part& part, const SheetsIn& sheet) {
    const Micro length = micro_of_piece(part.length_mm), width = micro_of_piece(part.width_mm);
    return (length <= sheet.width && width <= sheet.height) ||
           (width <= sheet.width && length <= sheet.height);
}

BoardCut cut_board(const CutListIn& in, const job::Board& board) {
    BoardCut cut;
    cut.board = board;
    SheetsIn sheets{micro_of_stock(board.sheet_length_mm - 2 * in.trim_mm),
                    micro_of_stock(board.sheet_width_mm - 2 * in.trim_mm),
                    micro_of_piece(in.kerf_mm),
                    {}};
    std::vector<int> fitting;
    for (std::size_t i = 0; i < in.parts.size(); ++i)
        if (in.parts[i].board == board.name)
            (fits(in.parts[i], sheets) ? fitting : cut.too_large).push_back(static_cast<int>(i));
    const double longest = mm_of(std::max(sheets.width, sheets.height));
    cut.pieces = pieces_of(in.parts, fitting, in.kerf_mm, longest);
    for (const Piece& piece : cut.pieces) {
        sheets.pieces.push_back({micro_of_piece(piece.length_mm), micro_of_piece(piece.width_mm), true});
        cut.used_mm2 += piece.length_mm * piece.width_mm;
    }
    const SheetsAnswer answer = few_sheets(sheets);
    for (const CutTree& tree : answer.sheets) cut.sheets.push_back(layout_of(tree, sheets.kerf));
    cut.least = answer.least;
    cut.to_buy = std::max(0, static_cast<int>(cut.sheets.size()) - board.at_hand);
    cut.price = cut.to_buy * board.price;
    return cut;
}

struct Bar {
    double length_mm = 0;
    double price = 0;
    int at_hand = 0;
};

std::optional<Bar> bar_named(const CutListIn& in, const std::string& name) {
    for (const auto& stiffener : in.stiffeners)
        if (stiffener.name == name) return Bar{stiffener.length_mm, stiffener.price, 0};
    for (const auto& tube : in.tubes)
        if (tube.name == name) return Bar{tube.length_mm, tube.price, tube.at_hand};
    return std::nullopt;
}

/// Each half tube is sawn from a length of its own: two out of one would each lack half a kerf of their
/// height.
std::vector<int> lengths_to_cut(const CutListIn& in, const std::string& stock) {
    std::vector<int> cut;
    for (std::size_t i = 0; i < in.lengths.size(); ++i)
        if (in.lengths[i].stock == stock) cut.push_back(static_cast<int>(i));
    return cut;
}

BarCut cut_bars(const CutListIn& in, const std::string& stock) {
    const auto bar = bar_named(in, stock);
    DRAWERCAST_DEMAND(bar.has_value(), "a length names its stock");
    BarCut cut;
    cut.stock = stock, cut.bar_mm = bar->length_mm;
    LengthsIn lengths{micro_of_stock(bar->length_mm), micro_of_piece(in.kerf_mm), {}};
    std::vector<int> index;
    for (const int i : lengths_to_cut(in, stock)) {
        const Micro length = micro_of_piece(in.lengths[static_cast<std::size_t>(i)].length_mm);
        if (length > lengths.bar)
            cut.too_long.push_back(i);
        else
            lengths.pieces.push_back(length), index.push_back(i);
    }
    const LengthsAnswer answer = fewest_bars(lengths);
    for (const auto& pieces : answer.bars) {
        cut.bars.emplace_back();
        for (const int piece : pieces) cut.bars.back().push_back(index[static_cast<std::size_t>(piece)]);
    }
    cut.least = answer.least, cut.proven = answer.proven;
    cut.to_buy = std::max(0, static_cast<int>(cut.bars.size()) - bar->at_hand);
    cut.price = cut.to_buy * bar->price;
    return cut;
}

} // namespace

CutList cut_list_of(const CutListIn& in) {
    CutList list;
    for (const auto& name : names_in(in.parts, [](const Part& part) { return part.board; })) {
        const auto board = std::find_if(in.boards.begin(), in.boards.end(),
                                        [&](const job::Board& known) { return known.name == name; });
        DRAWERCAST_DEMAND(board != in.boards.end(), "a part names its board");
        list.boards.push_back(cut_board(in, *board));
    }
    for (const auto& name : names_in(in.lengths, [](const LengthPart& part) { return part.stock; }))
        list.bars.push_back(cut_bars(in, name));
    return list;
}

} // namespace drawercast::stock
