// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/vec.h"

#include <numbers>

namespace drawercast::shape {

Turn Turn::of_degrees(double degrees) {
    int quarters = 0; // low bits of the nearest whole number of quarter turns; the rest is exact
    const double rest = std::remquo(degrees, 90.0, &quarters) * (std::numbers::pi / 180);
    const double c = std::cos(rest);
    const double s = std::sin(rest);
    switch (quarters & 3) {
    case 1:
        return {-s, c};
    case 2:
        return {-c, -s};
    case 3:
        return {s, -c};
    default:
        return {c, s};
    }
}

} // namespace drawercast::shape
