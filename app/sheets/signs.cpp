// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/signs.h"

#include <numbers>

namespace drawercast::sheets {

Path frame_sign(Vec center, double height, bool mirrored) {
    constexpr double stem = 0.2, arm = 0.62, waist = 0.46; // shares of the height: stem's width, arms' reach
    const double side = mirrored ? -1 : 1;
    const auto at = [&](double x, double y) { // from the lower-left corner of the upright letter, y up
        return Vec{center.x + side * (x - arm / 2) * height, center.y - (y - 0.5) * height};
    };
    return polygon({at(0, 0), at(stem, 0), at(stem, waist - stem / 2), at(arm * 0.85, waist - stem / 2),
                    at(arm * 0.85, waist + stem / 2), at(stem, waist + stem / 2), at(stem, 1 - stem),
                    at(arm, 1 - stem), at(arm, 1), at(0, 1)});
}

Path front_arrow(Vec center, double height) {
    const double w = height * 0.36;
    const auto at = [&](double x, double y) { return center + Vec{x * w, y * height}; };
    return polygon({at(0, 0.5), at(-1, 0.12), at(-0.5, 0.12), at(-0.5, -0.5), at(0.5, -0.5), at(0.5, 0.12),
                    at(1, 0.12)});
}

Path datum_quarters(Vec center, double radius) {
    Path path;
    for (const double side : {1.0, -1.0}) {
        Strand quarter;
        quarter.closed = true;
        quarter.start = center;
        quarter.pieces = {{center + Vec{side * radius, 0}, 0}, {center + Vec{0, side * radius}, radius}};
        path.strands.push_back(std::move(quarter));
    }
    return path;
}

} // namespace drawercast::sheets
