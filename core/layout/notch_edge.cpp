// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/notch_edge.h"

#include "base/demand.h"
#include "shape/region.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace drawercast::layout {

namespace {

using shape::Ring;
using shape::Vec;

constexpr double side_mm = 8; // shorter sides have no middle worth finding

Vec side_of(const Ring& ring, std::size_t i) { return ring[(i + 1) % ring.size()] - ring[i]; }

std::vector<Ring> outer_rings(const PocketForm& form) {
    std::vector<shape::Region> levels;
    std::vector<Ring> rings;
    for (const auto& cut : form.cuts)
        if (cut.kind == Cut<shape::InObject>::Kind::level) {
            rings.push_back(shape::traced(cut.outline.contour));
            levels.push_back(shape::region_of(cut.outline.contour));
        }
    if (rings.size() < 2) return rings; // as traced: no rounding to the grid of set operations
    const auto all = shape::united(levels);
    if (!all) return {rings.front()};
    rings.clear();
    for (const auto& patch : all->patches) rings.push_back(patch.outer);
    return rings;
}

} // namespace

NotchEdge::NotchEdge(const PocketForm& form) {
    double from = 0;
    for (auto& ring : outer_rings(form)) {
        if (ring.size() < 3) continue;
        const double length = shape::perimeter(ring);
        parts_.push_back({std::move(ring), from, length});
        from += length;
    }
}

NotchEdge::Seat NotchEdge::seat(const Part& part, std::size_t side, double share, double along_mm) const {
    const Vec way = side_of(part.ring, side);
    return {part.ring[side] + way * share, std::atan2(way.y, way.x) * 180 / std::numbers::pi, along_mm};
}

NotchEdge::Seat NotchEdge::nearest(Vec point) const {
    DRAWERCAST_DEMAND(!empty(), "an edge to sit on");
    Seat best;
    double least = std::numeric_limits<double>::infinity();
    for (const Part& part : parts_) {
        double along = part.from_mm;
        for (std::size_t i = 0; i < part.ring.size(); ++i) {
            const Vec way = side_of(part.ring, i);
            const double length = shape::length(way);
            const double share =
                length > 0 ? std::clamp(shape::dot(point - part.ring[i], way) / (length * length), 0.0, 1.0)
                           : 0;
            const double distance = shape::length(part.ring[i] + way * share - point);
            if (distance < least) {
                least = distance;
                best = seat(part, i, share, along + share * length);
            }
            along += length;
        }
    }
    return best;
}

NotchEdge::Seat NotchEdge::slid(const Seat& from, double by_mm) const {
    DRAWERCAST_DEMAND(!empty(), "an edge to slide on");
    auto part = std::find_if(parts_.rbegin(), parts_.rend(),
                             [&](const Part& one) { return one.from_mm <= from.along_mm; });
    if (part == parts_.rend()) --part;
    double rest = std::fmod(from.along_mm - part->from_mm + by_mm, part->length_mm);
    if (rest < 0) rest += part->length_mm;
    const double along = part->from_mm + rest;
    for (std::size_t i = 0; i < part->ring.size(); ++i) {
        const double length = shape::length(side_of(part->ring, i));
        if (rest <= length && length > 0) return seat(*part, i, rest / length, along);
        rest -= length;
    }
    return seat(*part, 0, 0, part->from_mm); // what rounding left over at the ring's end
}

std::vector<NotchEdge::Seat> NotchEdge::middles() const {
    std::vector<Seat> middles;
    for (const Part& part : parts_) {
        double along = part.from_mm;
        for (std::size_t i = 0; i < part.ring.size(); ++i) {
            const double length = shape::length(side_of(part.ring, i));
            if (length >= side_mm) middles.push_back(seat(part, i, 0.5, along + length / 2));
            along += length;
        }
    }
    return middles;
}

} // namespace drawercast::layout
