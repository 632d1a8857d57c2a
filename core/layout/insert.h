// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/drawer.h"
#include "shape/frame.h"

#include <vector>

namespace drawercast::layout {

/// The insert before any pocket, finished size, drawer frame: the drawer's outline inset by the gap, less the
/// obstructions outset by it, mitred (limit 2).
struct Insert {
    shape::Area<shape::InDrawer> area; ///< one piece, else refused ("insert-split"); no holes are lost
    std::vector<shape::Outline<shape::InDrawer>>
        edges;      ///< its boundary: outer ring first, then holes, for distances
    shape::Box box; ///< exact bounding box
    double area_mm2 = 0;
    double thickness_mm = 0;
    shape::Outline<shape::InDrawer> drawer; ///< the drawer itself, lower-left of its box at (0, 0)
    std::vector<shape::Outline<shape::InDrawer>> obstructions;
};

Expected<Insert> insert_of(const job::Drawer& drawer, double gap_mm);

} // namespace drawercast::layout
