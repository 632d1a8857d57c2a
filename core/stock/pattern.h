// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/cut_tree.h"
#include "stock/micro.h"

#include <vector>

/// How pieces go together, before it is known how a saw gets at them. Sizes are grown: each piece with one
/// kerf to its right and one behind it, and the sheet likewise, so that the saw's width is gone from the
/// searches.
namespace drawercast::stock {

/// A piece, or two patterns side by side (upright: left and right) or one behind the other (level).
struct Pattern {
    Micro width = 0;
    Micro height = 0;
    int piece = -1; ///< ≥ 0: of the caller's list
    bool turned = false;
    Saw joint = Saw::none;
    int first = -1; ///< indices into the same list of patterns
    int second = -1;
};

/// The cuts that free pattern `root` from a sheet of its real size: first whatever the pattern leaves over,
/// the greater offcut first, then the joints.
CutTree tree_of(const std::vector<Pattern>& patterns, int root, Micro width, Micro height, Micro kerf);

} // namespace drawercast::stock
