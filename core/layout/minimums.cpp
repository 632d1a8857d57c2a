// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/minimums.h"

#include <algorithm>

namespace drawercast::layout {

double Minimums::wall(double depth_mm) const { return std::max(wall_mm, depth_mm / wall_ratio); }

double Minimums::edge(double depth_mm) const { return depth_mm > deep_mm ? edge_deep_mm : edge_mm; }

Minimums minimums_of(const job::Minimums& own, job::Firmness firmness) {
    Minimums minimums;
    switch (firmness) {
    case job::Firmness::firm:
        break;
    case job::Firmness::medium:
        minimums.wall_mm = 11;
        minimums.wall_ratio = 3.5;
        break;
    case job::Firmness::soft:
        minimums.wall_mm = 12;
        minimums.wall_ratio = 3;
        break;
    }
    if (own.wall_mm) minimums.wall_mm = *own.wall_mm;
    if (own.wall_ratio) minimums.wall_ratio = *own.wall_ratio;
    if (own.edge_mm) minimums.edge_mm = minimums.edge_deep_mm = *own.edge_mm;
    if (own.floor_mm) minimums.floor_mm = minimums.floor_heavy_mm = *own.floor_mm;
    return minimums;
}

} // namespace drawercast::layout
