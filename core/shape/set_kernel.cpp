// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/set_kernel.h"

#if defined(__GNUC__) && !defined(__clang__) // g++ 12 follows a path in Boost that can't be taken
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"
#endif
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include <algorithm>

namespace drawercast::shape::kernel {
namespace {

namespace bg = boost::geometry;
using P = bg::model::d2::point_xy<double>;
using Poly = bg::model::polygon<P>; // clockwise and closed: the library's best tested form
using Multi = bg::model::multi_polygon<Poly>;

/// Rings run clockwise there and counter-clockwise here (holes the other way), and repeat their first point.
bg::model::ring<P> turned(const Ring& ring) {
    bg::model::ring<P> out;
    if (ring.empty()) return out;
    out.reserve(ring.size() + 1);
    out.emplace_back(ring[0].x, ring[0].y); // stays first, so that there and back is the same ring
    for (std::size_t i = ring.size(); i-- > 0;) out.emplace_back(ring[i].x, ring[i].y);
    return out;
}

Ring turned(const bg::model::ring<P>& ring) {
    Ring out;
    out.reserve(ring.size());
    for (std::size_t i = ring.size(); i-- > 1;) out.push_back({ring[i].x(), ring[i].y()});
    return out;
}

Multi to_library(const Region& region) {
    Multi out;
    for (const Patch& patch : region.patches) {
        Poly poly;
        poly.outer() = turned(patch.outer);
        for (const Ring& hole : patch.holes) poly.inners().push_back(turned(hole));
        out.push_back(std::move(poly));
    }
    return out;
}

Region from_library(const Multi& multi) {
    Region out;
    for (const Poly& poly : multi) {
        Patch patch{turned(poly.outer()), {}};
        for (const auto& hole : poly.inners()) patch.holes.push_back(turned(hole));
        out.patches.push_back(std::move(patch));
    }
    return out;
}

/// The library first simplifies a ring by a thousandth of the distance, which on large offsets is far more
/// than a chord may miss its arc by. Half a grid step still takes away what only the grid bent.
struct Distance : bg::strategy::buffer::distance_symmetric<double> {
    using distance_symmetric::distance_symmetric;
    double simplify_distance() const {
        return std::min(distance_symmetric::simplify_distance(), grid_mm / 2);
    }
};

} // namespace

std::optional<std::string> fault(const Region& region) {
    std::string reason;
    if (bg::is_valid(to_library(region), reason)) return std::nullopt;
    return reason;
}

Region cleaned(const Region& region) {
    Multi multi = to_library(region);
    bg::unique(multi);
    bg::remove_spikes(multi);
    Multi kept; // what was too thin for the grid has no ring left
    for (Poly& poly : multi) {
        if (poly.outer().size() < 4) continue;
        auto& holes = poly.inners();
        holes.erase(
            std::remove_if(holes.begin(), holes.end(), [](const auto& hole) { return hole.size() < 4; }),
            holes.end());
        kept.push_back(std::move(poly));
    }
    bg::correct(kept);
    return from_library(kept);
}

std::optional<Region> apply(Operation operation, const Region& a, const Region& b) {
    const Multi left = to_library(a);
    const Multi right = to_library(b);
    Multi out;
    try {
        switch (operation) {
        case Operation::unite:
            bg::union_(left, right, out);
            break;
        case Operation::share:
            bg::intersection(left, right, out);
            break;
        case Operation::subtract:
            bg::difference(left, right, out);
            break;
        }
    } catch (const bg::exception&) {
        return std::nullopt;
    }
    return from_library(out);
}

std::optional<Region> moved(const Region& region, double by_mm, Join join, std::size_t points_per_circle) {
    namespace buffer = bg::strategy::buffer;
    const Multi from = to_library(region);
    const Distance distance(by_mm);
    const buffer::side_straight side;
    const buffer::end_flat end;
    const buffer::point_circle point(points_per_circle);
    Multi out;
    try {
        if (join == Join::round)
            bg::buffer(from, out, distance, side, buffer::join_round(points_per_circle), end, point);
        else
            bg::buffer(from, out, distance, side, buffer::join_miter(miter_limit), end, point);
    } catch (const bg::exception&) {
        return std::nullopt;
    }
    return from_library(out);
}

} // namespace drawercast::shape::kernel
