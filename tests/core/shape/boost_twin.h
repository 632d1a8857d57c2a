// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#include <boost/geometry/geometries/segment.hpp>

/// Distances by Boost.Geometry, which is slow and right: the twin of our own. Tests only.
namespace drawercast::shape::testing {

namespace bg = boost::geometry;
using TwinPoint = bg::model::d2::point_xy<double>;
using TwinSegment = bg::model::segment<TwinPoint>;
using TwinPolygon = bg::model::polygon<TwinPoint, false, true>;

inline TwinPoint twin(Vec p) { return {p.x, p.y}; }

inline TwinPolygon twin(const Ring& ring) {
    TwinPolygon out;
    for (const Vec p : ring) bg::append(out.outer(), twin(p));
    bg::append(out.outer(), twin(ring.front()));
    return out;
}

/// Distance of two cores as sets of points: points, segments or filled rings.
inline double core_distance(const Ring& a, const Ring& b) {
    const auto with_b = [&](const auto& first) {
        if (b.size() == 1) return bg::distance(first, twin(b[0]));
        if (b.size() == 2) return bg::distance(first, TwinSegment(twin(b[0]), twin(b[1])));
        return bg::distance(first, twin(b));
    };
    if (a.size() == 1) return with_b(twin(a[0]));
    if (a.size() == 2) return with_b(TwinSegment(twin(a[0]), twin(a[1])));
    return with_b(twin(a));
}

} // namespace drawercast::shape::testing
