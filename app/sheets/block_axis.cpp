// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/block_axis.h"

#include <cmath>
#include <numbers>

namespace drawercast::sheets {

using shape::Vec;

BlockAxis axis_of(const casting::Block& block) {
    // the longest straight side of the largest part; rings made of many chords have none worth the name
    constexpr double worth_mm = 5;
    double longest = worth_mm;
    Vec side{1, 0};
    for (const auto& part : block.parts) {
        const auto& core = part.cut.outline.contour.core;
        for (std::size_t i = 0; core.size() > 1 && i < core.size(); ++i) {
            const Vec d = core[(i + 1) % core.size()] - core[i];
            if (length(d) <= longest + 1e-6) continue;
            longest = length(d);
            side = d;
        }
    }
    BlockAxis axis;
    axis.turn_deg = std::atan2(side.y, side.x) * 180 / std::numbers::pi;
    if (axis.turn_deg > 90 + 1e-6) axis.turn_deg -= 180;
    if (axis.turn_deg <= -90 + 1e-6) axis.turn_deg += 180;
    const double nearest_quarter = std::round(axis.turn_deg / 90) * 90;
    if (std::abs(axis.turn_deg - nearest_quarter) < 1e-6) axis.turn_deg = nearest_quarter;
    const shape::Turn back = shape::Turn::of_degrees(-axis.turn_deg);
    for (const auto& part : block.parts)
        for (const Vec p : shape::traced(part.cut.outline.contour, 0.1)) {
            const Vec own = back(p - block.center.vec());
            axis.half_mm.x = std::max(axis.half_mm.x, std::abs(own.x));
            axis.half_mm.y = std::max(axis.half_mm.y, std::abs(own.y));
        }
    return axis;
}

} // namespace drawercast::sheets
