// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/layers.h"

#include <algorithm>
#include <limits>

namespace drawercast::casting {

double volume(const Layers& layers) {
    double sum = 0;
    for (const Slab& slab : layers) sum += slab.area_mm2 * (slab.top_mm - slab.bottom_mm);
    return sum;
}

double volume_below(const Layers& layers, double height_mm) {
    double sum = 0;
    for (const Slab& slab : layers)
        sum += slab.area_mm2 * std::max(0.0, std::min(height_mm, slab.top_mm) - slab.bottom_mm);
    return sum;
}

double area_at(const Layers& layers, double height_mm) {
    double sum = 0;
    for (const Slab& slab : layers)
        if (slab.bottom_mm <= height_mm && height_mm < slab.top_mm) sum += slab.area_mm2;
    return sum;
}

double lowest_top(const Layers& layers) {
    double lowest = std::numeric_limits<double>::infinity();
    for (const Slab& slab : layers) lowest = std::min(lowest, slab.top_mm);
    return lowest;
}

} // namespace drawercast::casting
