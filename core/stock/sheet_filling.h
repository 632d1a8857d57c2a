// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/sheets.h"

#include <tuple>
#include <vector>

namespace drawercast::stock {

enum class Fit { short_side, area };           ///< what is to be left over least beside the piece
enum class Split { longer_rest, widest_rest }; ///< which of two first cuts frees a piece in its corner

struct FillingRule {
    Fit fit = Fit::short_side;
    Split split = Split::longer_rest;
};

/// Lays pieces in the given order, each into the panel it fits best of all sheets begun.
std::vector<CutTree> filled(const SheetsIn& in, const std::vector<int>& order, const FillingRule& rule);

/// How good a set of sheets is: fewer of them, then a larger offcut across a whole one (a panel to keep, and
/// parts close together), then a larger offcut of any kind.
using SheetsCost = std::tuple<int, double, double>;
SheetsCost cost_of(const std::vector<CutTree>& sheets);

} // namespace drawercast::stock
