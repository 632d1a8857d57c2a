// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/cavity.h"
#include "layout/insert.h"
#include "layout/pocket.h"
#include "shape/region.h"

#include <memory>
#include <string>
#include <vector>

/// Pockets and inserts straight from outlines, so that casting is tested without what makes them.
namespace drawercast::casting::built {

using layout::PocketForm;
using shape::Contour;

inline Contour contour(const shape::Given& given) { return *shape::contour_of(given); }

inline layout::Cut<shape::InObject> cut(Contour outline, double depth_mm) {
    layout::Cut<shape::InObject> out;
    out.outline.contour = std::move(outline);
    out.depth_mm = depth_mm;
    return out;
}

inline layout::Cut<shape::InObject> cut(const shape::Given& given, double depth_mm,
                                        const shape::Pose& pose = {}) {
    return cut(shape::placed(contour(given), pose), depth_mm);
}

inline layout::Cut<shape::InObject> notch(const shape::Given& given, double depth_mm,
                                          const shape::Pose& pose) {
    auto out = cut(given, depth_mm, pose);
    out.kind = layout::Cut<shape::InObject>::Kind::notch;
    return out;
}

/// A lying cylinder from x = `from` to `to`.
inline layout::Cut<shape::InObject> lying(double from, double to, double diameter_mm, double axis_mm) {
    const double radius = diameter_mm / 2;
    const double half = axis_mm >= 0 ? radius : std::sqrt(radius * radius - axis_mm * axis_mm);
    auto out = cut(Contour{{{from, -half}, {to, -half}, {to, half}, {from, half}}, 0}, axis_mm + radius);
    out.round = layout::Round{radius, axis_mm};
    return out;
}

inline std::shared_ptr<const PocketForm> form(std::vector<layout::Cut<shape::InObject>> cuts) {
    PocketForm out;
    for (const auto& one : cuts) out.greatest_depth_mm = std::max(out.greatest_depth_mm, one.depth_mm);
    out.cuts = std::move(cuts);
    return std::make_shared<const PocketForm>(std::move(out));
}

inline std::shared_ptr<const layout::PlacedPocket>
pocket(std::string subject, std::shared_ptr<const PocketForm> form, shape::Pose pose) {
    layout::PlacedPocket out;
    out.subject = std::move(subject);
    out.pose = pose;
    for (const auto& one : form->cuts) {
        layout::Cut<shape::InDrawer> placed;
        placed.kind = one.kind == layout::Cut<shape::InObject>::Kind::notch
                          ? layout::Cut<shape::InDrawer>::Kind::notch
                          : layout::Cut<shape::InDrawer>::Kind::level;
        placed.index = one.index;
        placed.outline.contour = shape::placed(one.outline.contour, pose);
        placed.depth_mm = one.depth_mm;
        placed.through = one.through;
        placed.round = one.round;
        out.boxes.push_back(shape::bounds(placed.outline.contour));
        out.box.add(out.boxes.back());
        out.cuts.push_back(std::move(placed));
    }
    out.form = std::move(form);
    return std::make_shared<const layout::PlacedPocket>(std::move(out));
}

/// A rectangular insert with its lower-left corner at the origin.
inline std::shared_ptr<const layout::Insert> insert(double width_mm, double depth_mm, double thickness_mm) {
    layout::Insert out;
    const Contour outline{{{0, 0}, {width_mm, 0}, {width_mm, depth_mm}, {0, depth_mm}}, 0};
    out.area.region = shape::region_of(outline);
    out.edges = {{outline}};
    out.box = shape::bounds(outline);
    out.area_mm2 = shape::area(outline);
    out.thickness_mm = thickness_mm;
    out.drawer = {outline};
    return std::make_shared<const layout::Insert>(std::move(out));
}

} // namespace drawercast::casting::built
