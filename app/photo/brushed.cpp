// SPDX-License-Identifier: GPL-3.0-or-later
#include "photo/brushed.h"

#include "base/contains.h"
#include "base/number.h"
#include "shape/region.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::app::photo {

namespace {

using shape::Patch;
using shape::Region;
using shape::Ring;
using shape::Vec;

// Points of a stroke are points of the outline afterwards: few enough to be dragged.
constexpr double line_within_mm = 0.1; ///< of the pointer's way
constexpr int half_round = 12;         ///< chords of a stroke's end: 0.07 mm at the widest brush
constexpr double least_mm2 = 25;       ///< an object's, as in core/capture

/// Those of `points` from `first` to `last` that the line needs (Douglas and Peucker 1973), without `last`.
void thin(const std::vector<Vec>& points, std::size_t first, std::size_t last, std::vector<Vec>& kept) {
    const Vec along = points[last] - points[first];
    const double long2 = dot(along, along);
    double farthest = 0;
    std::size_t at = first;
    for (std::size_t i = first + 1; i < last; ++i) {
        const Vec off = points[i] - points[first];
        const double t = long2 > 0 ? std::clamp(dot(off, along) / long2, 0.0, 1.0) : 0;
        if (const double d = length(off - along * t); d > farthest) farthest = d, at = i;
    }
    if (farthest <= line_within_mm) return kept.push_back(points[first]);
    thin(points, first, at, kept);
    thin(points, at, last, kept);
}

/// All points within `radius` of the line from `a` to `b`.
Ring capsule(Vec a, Vec b, double radius) {
    const Vec along = b - a;
    const double start = std::atan2(along.y, along.x) - std::numbers::pi / 2;
    Ring ring;
    for (int end = 0; end < 2; ++end)
        for (int i = 0; i <= half_round; ++i) {
            const double angle = start + std::numbers::pi * (end + double(i) / half_round);
            ring.push_back((end ? a : b) + Vec{std::cos(angle), std::sin(angle)} * radius);
        }
    return ring;
}

Expected<Region> region_of(const Stroke& stroke) {
    std::vector<Vec> way;
    thin(stroke.points, 0, stroke.points.size() - 1, way);
    way.push_back(stroke.points.back());
    std::vector<Region> parts;
    for (std::size_t i = 0; i + 1 < way.size(); ++i)
        parts.push_back(shape::region_of(capsule(way[i], way[i + 1], stroke.radius_mm)));
    return shape::united(parts);
}

/// Empty where it crosses itself: then there is no area to add to.
Region region_of(const Outline& outline) {
    const auto contour = shape::contour_of(outline.seen);
    return contour ? shape::region_of(*contour) : Region{};
}

bool meet(const Region& a, const Region& b) {
    const auto both = shape::shared(a, b);
    return both && !both->empty();
}

/// Where a point is one of `before` but for the set operation's grid, it is that one.
shape::Polygon polygon_of(const Patch& patch, const std::vector<shape::Corner>& before) {
    shape::Polygon out;
    for (const Vec p : patch.outer) {
        shape::Corner corner{{grained(p.x), grained(p.y)}, 0};
        for (const shape::Corner& old : before)
            if (length(old.at - p) < 2 * shape::grid_mm) corner.at = old.at;
        out.corners.push_back(corner);
    }
    return out;
}

void sort_largest_first(std::vector<Patch>& patches) {
    std::stable_sort(patches.begin(), patches.end(), [](const Patch& a, const Patch& b) {
        return shape::area(a.outer) > shape::area(b.outer);
    });
}

std::vector<Outline> taken_away(const std::vector<Outline>& outlines, const Region& stroke) {
    std::vector<Outline> out, further;
    for (const Outline& one : outlines) {
        const Region before = one.by_hand ? region_of(one) : Region{};
        auto rest = meet(before, stroke) ? shape::without(before, stroke) : Expected<Region>(Region{});
        if (!meet(before, stroke) || !rest) {
            out.push_back(one);
            continue;
        }
        sort_largest_first(rest->patches);
        bool first = true;
        for (const Patch& patch : rest->patches) {
            if (shape::area(patch.outer) < least_mm2) break;
            Outline part = one;
            part.seen = polygon_of(patch, one.seen.corners);
            if (!first) part.name.clear(), part.number = 0;
            (first ? out : further).push_back(std::move(part));
            first = false;
        }
    }
    out.insert(out.end(), further.begin(), further.end());
    return out;
}

std::vector<Outline> added(const std::vector<Outline>& outlines, const Region& stroke) {
    std::vector<std::size_t> bridged;
    std::vector<Region> parts{stroke};
    std::vector<shape::Corner> before;
    std::size_t largest = 0;
    double most = 0;
    bool any_by_hand = false;
    for (std::size_t i = 0; i < outlines.size(); ++i) {
        Region region = region_of(outlines[i]);
        if (!meet(region, stroke)) continue;
        if (const double area = shape::area(region); area > most) most = area, largest = i;
        any_by_hand |= outlines[i].by_hand;
        bridged.push_back(i);
        const auto& corners = outlines[i].seen.corners;
        before.insert(before.end(), corners.begin(), corners.end());
        parts.push_back(std::move(region));
    }
    if (!any_by_hand) return outlines;
    auto whole = shape::united(parts);
    if (!whole || whole->empty()) return outlines;
    sort_largest_first(whole->patches);
    std::vector<Outline> out;
    for (std::size_t i = 0; i < outlines.size(); ++i) {
        const bool joined = contains(bridged, i);
        if (joined && i != largest) continue;
        out.push_back(outlines[i]);
        if (!joined) continue;
        out.back().seen = polygon_of(whole->patches.front(), before);
        out.back().by_hand = true;
    }
    return out;
}

} // namespace

std::vector<Outline> brushed(std::vector<Outline> outlines, const Stroke& stroke) {
    const auto region = region_of(stroke);
    if (!region || region->empty()) return outlines; // nothing but the pixels under it
    return stroke.adds ? added(outlines, *region) : taken_away(outlines, *region);
}

} // namespace drawercast::app::photo
