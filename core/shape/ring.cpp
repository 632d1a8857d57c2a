// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/contour.h"

namespace drawercast::shape {

double area(const Ring& ring) {
    if (ring.size() < 3) return 0;
    double twice = 0; // about the first vertex: far from the origin the products would cancel badly
    for (std::size_t i = 1; i + 1 < ring.size(); ++i)
        twice += cross(ring[i] - ring[0], ring[i + 1] - ring[0]);
    return twice / 2;
}

double perimeter(const Ring& ring) {
    double sum = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) sum += length(ring[(i + 1) % ring.size()] - ring[i]);
    return sum;
}

Box bounds(const Ring& ring) {
    Box box;
    for (const Vec p : ring) box.add(p);
    return box;
}

} // namespace drawercast::shape
