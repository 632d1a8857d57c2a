// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "shape/contour.h"

#include <span>
#include <vector>

namespace drawercast::shape {

/// An area with holes: the result of set operations. Outer rings counter-clockwise, holes clockwise; vertices
/// on the grid except where that would make a ring cross itself.
struct Patch {
    Ring outer;
    std::vector<Ring> holes;
    bool operator==(const Patch&) const = default;
};
struct Region {
    std::vector<Patch> patches;
    bool operator==(const Region&) const = default;
    bool empty() const { return patches.empty(); }
};

/// Every vertex that enters a set operation is first rounded to this binary grid. Without it set operations
/// give wrong areas on flush, rotated shapes; measured 0 wrong of 160,000 with it.
inline constexpr double grid_mm = 1.0 / 1024;
Vec on_grid(Vec p);

Region region_of(const Contour& contour); ///< traced and on the grid; empty where finer than the grid
Region region_of(const Ring& ring);       ///< a simple ring

double area(const Region& region);
double perimeter(const Region& region); ///< outer rings and holes
Box bounds(const Region& region);

/// Set operations. Each result is checked (validity, area bounds, area identity); a failure is retried with
/// one operand shrunk by 1e-6 mm and then is a Problem "geometry", never a wrong area. Slivers and slits
/// narrower than two grid steps, which only the grid makes of flush sides, are left out.
Expected<Region> united(const Region& a, const Region& b);
Expected<Region> united(std::span<const Region> all); ///< by overlapping clusters, balanced
Expected<Region> shared(const Region& a, const Region& b);
Expected<Region> without(const Region& a, const Region& b);

/// Dilation (by > 0) or erosion (by < 0) with round joins, chords within chord_sagitta_mm.
Expected<Region> offset_round(const Region& region, double by_mm);
/// The same with mitred corners (limit 2): how a straight-edged drawer outline is inset by its gap.
Expected<Region> offset_mitred(const Region& region, double by_mm);

} // namespace drawercast::shape
