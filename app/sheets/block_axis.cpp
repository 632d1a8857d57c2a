// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/block_axis.h"

#include <cmath>

namespace drawercast::sheets {

using shape::Vec;

namespace {

double turn_in_drawer(const std::string& subject, const job::Job& job) {
    for (const auto& drawer : job.drawers)
        for (const auto& pocket : drawer->pockets)
            if (job::subject_of(pocket) == subject) return pocket.pose.turn_deg;
    return 0;
}

} // namespace

bool is_square(const BlockAxis& axis) { return axis.turn_deg == 0 || axis.turn_deg == 90; }

BlockAxis axis_of(const casting::Block& block, const job::Job& job) {
    BlockAxis axis;
    axis.turn_deg = std::remainder(-turn_in_drawer(block.subject, job), 180); // mirrored: angles change sign
    if (axis.turn_deg == -90) axis.turn_deg = 90;
    if (axis.turn_deg == 0) axis.turn_deg = 0; // not −0
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
