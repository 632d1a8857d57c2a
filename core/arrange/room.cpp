// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/room.h"

#include "shape/segments.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace drawercast::arrange {

using shape::Vec;

shape::Box origins(const Room& room, const TurnedFigure& figure) {
    constexpr double anywhere =
        std::numeric_limits<double>::infinity(); // an origin may lie beside its figure
    shape::Box box{{-anywhere, -anywhere}, {anywhere, anywhere}};
    for (const TurnedPart& part : figure.parts) {
        const double away = part.round_mm + room.edge_mm(part.depth_mm);
        box.min = {std::max(box.min.x, room.box.min.x + away - part.box.min.x),
                   std::max(box.min.y, room.box.min.y + away - part.box.min.y)};
        box.max = {std::min(box.max.x, room.box.max.x - away - part.box.max.x),
                   std::min(box.max.y, room.box.max.y - away - part.box.max.y)};
    }
    return box;
}

namespace {

double ring_distance(const Room& room, Vec p) {
    double squared = std::numeric_limits<double>::infinity();
    for (const auto& ring : room.rings)
        for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
            squared = std::min(squared, distance_to_segment_squared(p, ring[j], ring[i]));
    return std::sqrt(squared);
}

bool allowed(const Room& room, Vec p) {
    for (std::size_t i = 0; i < room.rings.size(); ++i)
        if (shape::holds_half_open(room.rings[i], p) != (i == 0)) return false;
    return true;
}

/// The boundary of a room as parts, so that the same exact test serves.
bool near_ring(const std::vector<Vec>& ring, const TurnedPart& part, Vec at, double clear_mm) {
    TurnedPart side; // one side at a time: the inside of a ring is no hollow
    side.core.resize(2);
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        side.core = {ring[j], ring[i]};
        side.box = {};
        side.box.add(ring[j]);
        side.box.add(ring[i]);
        if (too_near(side, part, at, clear_mm)) return true;
    }
    return false;
}

} // namespace

bool leaves(const Room& room, const TurnedFigure& figure, Vec at) {
    if (room.rings.empty()) return false;
    for (const TurnedPart& part : figure.parts) {
        if (!allowed(room, part.core[0] + at)) return true;
        for (const auto& ring : room.rings)
            if (near_ring(ring, part, at, room.edge_mm(part.depth_mm))) return true;
    }
    return false;
}

double leaving_weight(const Room& room, const TurnedFigure& figure, Vec at) {
    double sum = 0;
    for (const TurnedPart& part : figure.parts)
        for (const Disc& disc : part.discs) {
            const Vec p = disc.center + at;
            const double radius = disc.radius + part.round_mm;
            const double in = ring_distance(room, p) * (allowed(room, p) ? 1 : -1);
            sum += std::max(0.0, radius + room.edge_mm(part.depth_mm) - in) * std::max(radius, 1e-3);
        }
    return sum;
}

} // namespace drawercast::arrange
