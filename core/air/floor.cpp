// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/floor.h"

#include <algorithm>
#include <cmath>

namespace drawercast::air {
namespace {

using shape::InDrawer;
using shape::Vec;

/// A lying round's opening is a rectangle whose first side runs along the axis, in the drawer.
Ridge ridge_of(const layout::Cut<InDrawer>& cut, const shape::MoldMap& map) {
    const auto& core = cut.outline.contour.core;
    const auto to_mold = [&](Vec p) { return map.to_mold(shape::Point<InDrawer>::of(p)).vec(); };
    const Vec from = to_mold((core[0] + core[3]) * 0.5);
    const Vec to = to_mold((core[1] + core[2]) * 0.5);
    return {from, (to - from) * (1 / length(to - from)), map.length_to_mold(cut.round->radius_mm),
            map.length_to_mold(cut.round->axis_mm)};
}

} // namespace

double height_at(const Body& body, Vec p) {
    if (!body.ridge) return body.height_mm;
    const Ridge& ridge = *body.ridge;
    const double aside = cross(ridge.along, p - ridge.on_axis);
    const double rises = std::sqrt(std::max(0.0, ridge.radius_mm * ridge.radius_mm - aside * aside));
    return std::clamp(ridge.axis_mm + rises, 0.0, body.height_mm);
}

Floor floor_of(const layout::Insert& insert, std::span<const layout::PlacedPocket* const> pockets,
               double shrinkage) {
    const shape::MoldMap map(insert.box, shrinkage);
    Floor floor;
    floor.width_mm = map.length_to_mold(insert.box.width());
    floor.depth_mm = map.length_to_mold(insert.box.height());
    floor.height_mm = map.length_to_mold(insert.thickness_mm);
    floor.opening = map.to_mold(insert.area).region;
    floor.opening_mm2 = insert.area_mm2 * map.enlargement() * map.enlargement();
    for (const layout::PlacedPocket* pocket : pockets) {
        for (const auto& cut : pocket->cuts) {
            Body body;
            body.outline = map.to_mold(cut.outline).contour;
            body.height_mm = std::min(map.length_to_mold(cut.depth_mm), floor.height_mm);
            body.through = cut.through || body.height_mm >= floor.height_mm;
            if (cut.round) body.ridge = ridge_of(cut, map);
            body.pocket = static_cast<int>(floor.subjects.size());
            floor.bodies.push_back(std::move(body));
        }
        floor.subjects.push_back(pocket->subject);
    }
    return floor;
}

} // namespace drawercast::air
