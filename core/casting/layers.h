// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace drawercast::casting {

/// A body as slabs of even plan area over heights above the board, mm and mm². Slabs may lie beside each
/// other at the same height; a negative area takes away.
struct Slab {
    double bottom_mm = 0;
    double top_mm = 0;
    double area_mm2 = 0;
    bool operator==(const Slab&) const = default;
};
using Layers = std::vector<Slab>;

double volume(const Layers& layers);                         ///< mm³
double volume_below(const Layers& layers, double height_mm); ///< mm³
double area_at(const Layers& layers, double height_mm);      ///< mm², just above that height
double lowest_top(const Layers& layers);                     ///< mm; infinity where there are no slabs

} // namespace drawercast::casting
