// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/cut_tree.h"

#include <vector>

/// Sheets of one size, cut from edge to edge into all pieces.
namespace drawercast::stock {

struct SheetPiece {
    Micro width = 0;
    Micro height = 0;
    bool may_turn = true;
};

struct SheetsIn {
    Micro width = 0; ///< edges trimmed off already
    Micro height = 0;
    Micro kerf = 0;
    std::vector<SheetPiece> pieces; ///< each fits a sheet
};

struct SheetsAnswer {
    std::vector<CutTree> sheets; ///< fullest first
    int least = 0;               ///< no fewer sheets are possible
    bool proven = true;          ///< sheets.size() == least
};

inline constexpr int sheet_tries = 300;

/// Few sheets, and on one of them as large an offcut across it as may be: many orders of the pieces, each
/// piece into the panel it fits best, the panel cut by one of two rules; then orders like the best one
/// (seeded, the same every time). Not exact: `least` says how far off it may be. Fit and cutting rules after
/// Jylänki's survey (2010), A thousand ways to pack the bin, from memory.
SheetsAnswer few_sheets(const SheetsIn& in, int most_tries = sheet_tries);

/// A bound by area, by pieces that keep each other off a sheet, and, for few pieces that seem to fit one
/// sheet, by a search of that sheet.
int least_sheets(const SheetsIn& in);

} // namespace drawercast::stock
