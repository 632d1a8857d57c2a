// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/region.h"

#include "shape/simple.h"

namespace drawercast::shape {
namespace {

template <class Measure>
double summed(const Region& region, Measure measure) {
    double sum = 0;
    for (const Patch& patch : region.patches) {
        sum += measure(patch.outer);
        for (const Ring& hole : patch.holes) sum += measure(hole);
    }
    return sum;
}

} // namespace

Vec on_grid(Vec p) {
    // + 0.0: one zero only
    return {std::round(p.x / grid_mm) * grid_mm + 0.0, std::round(p.y / grid_mm) * grid_mm + 0.0};
}

Region region_of(const Ring& ring) {
    Patch patch;
    for (const Vec p : ring) {
        const Vec q = on_grid(p);
        if (patch.outer.empty() || patch.outer.back() != q) patch.outer.push_back(q);
    }
    while (patch.outer.size() > 1 && patch.outer.back() == patch.outer.front()) patch.outer.pop_back();
    if (area(patch.outer) <= 0) return {}; // finer than the grid: nothing left of it
    return {{std::move(patch)}};
}

Region region_of(const Contour& contour) {
    const Ring ring = traced(contour);
    if (contour.round_mm > 0 && !convex(contour) && first_meeting(ring)) {
        // Rounding closed a slot. The traced ring still stands where even this can't be done: its set
        // operations then refuse it with their reason.
        if (auto rounded = offset_round(region_of(contour.core), contour.round_mm)) return *rounded;
    }
    return region_of(ring);
}

double area(const Region& region) {
    return summed(region,
                  [](const Ring& ring) { return area(ring); }); // holes run clockwise: they count minus
}

double perimeter(const Region& region) {
    return summed(region, [](const Ring& ring) { return perimeter(ring); });
}

Box bounds(const Region& region) {
    Box box;
    for (const Patch& patch : region.patches) box.add(bounds(patch.outer));
    return box;
}

} // namespace drawercast::shape
