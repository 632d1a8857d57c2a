// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/micro.h"

#include <vector>

namespace drawercast::stock {

/// A saw cut from edge to edge of the panel at hand: upright (along y, at an x) or level (along x, at a y).
enum class Saw { none, upright, level };

/// A panel: cut in two, or a piece, or an offcut. The first part is the left or front one, `at` wide or high;
/// the kerf comes after it and the second part has what is left, which may be nothing.
struct CutNode {
    Micro width = 0;
    Micro height = 0;
    Saw saw = Saw::none;
    Micro at = 0;
    int first = -1;
    int second = -1;
    int piece = -1; ///< ≥ 0: this panel is that piece
    bool turned = false;
};

/// All cuts of one sheet. Node 0 is the sheet.
struct CutTree {
    std::vector<CutNode> nodes;

    CutTree() = default;
    CutTree(Micro width, Micro height) : nodes{{width, height, Saw::none, 0, -1, -1, -1, false}} {}

    /// Cuts panel `node` and returns the index of its first part, the second one's is the next.
    int cut(int node, Saw saw, Micro at, Micro kerf);
};

struct PlacedPiece {
    int piece = 0;
    bool turned = false;
    Micro x = 0;
    Micro y = 0;
    Micro width = 0;
    Micro height = 0;
};
struct SawCut { ///< a line along the kerf's near side, across its panel
    Micro x0 = 0, y0 = 0, x1 = 0, y1 = 0;
    int depth = 0; ///< 1: across the whole sheet
    Saw saw = Saw::none;
    Micro at = 0;          ///< from the panel's near edge: what the fence is set to
    Micro panel_width = 0; ///< of the panel that is cut in two
    Micro panel_height = 0;
    int first = -1; ///< ≥ 0: what comes off on the fence's side is that piece
    int second = -1;
};
struct Offcut {
    Micro x = 0;
    Micro y = 0;
    Micro width = 0;
    Micro height = 0;
};

/// A tree as a drawing: what lies where, and the cuts in the order they are sawn (each panel is cut after it
/// has been freed).
struct SheetLayout {
    std::vector<PlacedPiece> pieces;
    std::vector<SawCut> cuts;
    std::vector<Offcut> offcuts;
};
SheetLayout layout_of(const CutTree& tree, Micro kerf);

/// The largest panel that is left over, in square micrometers; and of those as wide or as high as the sheet.
struct LeftOver {
    double largest = 0;
    double across = 0;
};
LeftOver left_over(const CutTree& tree);

} // namespace drawercast::stock
