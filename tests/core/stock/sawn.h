// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/cut_tree.h"

#include <gtest/gtest.h>

#include <vector>

namespace drawercast::stock {

/// Saws a tree in the test's own way: every panel must come from a cut through all of the one before. Returns
/// how often each piece came out; its size is looked at too.
template <class Pieces>
std::vector<int> sawn(const CutTree& tree, Micro kerf, const Pieces& pieces) {
    std::vector<int> out(pieces.size(), 0);
    std::vector<int> times_made(tree.nodes.size(), 0);
    times_made[0] = 1;
    for (std::size_t i = 0; i < tree.nodes.size(); ++i) {
        const CutNode& panel = tree.nodes[i];
        EXPECT_EQ(times_made[i], 1) << "panel " << i;
        if (panel.saw == Saw::none) {
            if (panel.piece < 0) continue;
            const auto& piece = pieces[static_cast<std::size_t>(panel.piece)];
            EXPECT_EQ(panel.width, panel.turned ? piece.height : piece.width);
            EXPECT_EQ(panel.height, panel.turned ? piece.width : piece.height);
            ++out[static_cast<std::size_t>(panel.piece)];
            continue;
        }
        const CutNode &first = tree.nodes[static_cast<std::size_t>(panel.first)],
                      &second = tree.nodes[static_cast<std::size_t>(panel.second)];
        ++times_made[static_cast<std::size_t>(panel.first)];
        ++times_made[static_cast<std::size_t>(panel.second)];
        const bool upright = panel.saw == Saw::upright;
        const auto along = [&](const CutNode& node) { return upright ? node.width : node.height; };
        const auto across = [&](const CutNode& node) { return upright ? node.height : node.width; };
        EXPECT_EQ(along(first), panel.at);
        EXPECT_EQ(along(second), std::max<Micro>(0, along(panel) - panel.at - kerf));
        EXPECT_EQ(across(first), across(panel));
        EXPECT_EQ(across(second), across(panel));
    }
    return out;
}

} // namespace drawercast::stock
