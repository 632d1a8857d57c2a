// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/cut_tree.h"

#include "base/demand.h"

#include <algorithm>

namespace drawercast::stock {

namespace {

struct Corner {
    int node = 0;
    Micro x = 0;
    Micro y = 0;
    int depth = 1;
};

} // namespace

int CutTree::cut(int node, Saw saw, Micro at, Micro kerf) {
    const CutNode panel = nodes[static_cast<std::size_t>(node)];
    const Micro whole = saw == Saw::upright ? panel.width : panel.height;
    DRAWERCAST_DEMAND(saw != Saw::none && at > 0 && at < whole, "a cut goes through its panel");
    const Micro rest = std::max<Micro>(0, whole - at - kerf); // the kerf may run off the edge
    CutNode first = panel, second = panel;
    (saw == Saw::upright ? first.width : first.height) = at;
    (saw == Saw::upright ? second.width : second.height) = rest;
    const int index = static_cast<int>(nodes.size());
    nodes.push_back(first);
    nodes.push_back(second);
    CutNode& parent = nodes[static_cast<std::size_t>(node)];
    parent.saw = saw, parent.at = at, parent.first = index, parent.second = index + 1;
    return index;
}

SheetLayout layout_of(const CutTree& tree, Micro kerf) {
    SheetLayout out;
    if (tree.nodes.empty()) return out;
    std::vector<Corner> open{{0, 0, 0, 1}};
    while (!open.empty()) {
        const Corner at = open.back();
        open.pop_back();
        const CutNode& panel = tree.nodes[static_cast<std::size_t>(at.node)];
        if (panel.saw == Saw::none) {
            if (panel.piece >= 0)
                out.pieces.push_back({panel.piece, panel.turned, at.x, at.y, panel.width, panel.height});
            else if (panel.width > 0 && panel.height > 0)
                out.offcuts.push_back({at.x, at.y, panel.width, panel.height});
            continue;
        }
        const bool upright = panel.saw == Saw::upright;
        const Micro x = at.x + (upright ? panel.at : 0);
        const Micro y = at.y + (upright ? 0 : panel.at);
        const auto piece = [&](int node) { return tree.nodes[static_cast<std::size_t>(node)].piece; };
        out.cuts.push_back({x, y, upright ? x : at.x + panel.width, upright ? at.y + panel.height : y,
                            at.depth, panel.saw, panel.at, panel.width, panel.height, piece(panel.first),
                            piece(panel.second)});
        open.push_back({panel.second, upright ? x + kerf : x, upright ? y : y + kerf, at.depth + 1});
        open.push_back({panel.first, at.x, at.y, at.depth + 1});
    }
    return out;
}

LeftOver left_over(const CutTree& tree) {
    LeftOver over;
    const CutNode& sheet = tree.nodes.front();
    for (const CutNode& panel : tree.nodes) {
        if (panel.saw != Saw::none || panel.piece >= 0) continue;
        const double area = static_cast<double>(panel.width) * static_cast<double>(panel.height);
        over.largest = std::max(over.largest, area);
        if (panel.width == sheet.width || panel.height == sheet.height)
            over.across = std::max(over.across, area);
    }
    return over;
}

} // namespace drawercast::stock
