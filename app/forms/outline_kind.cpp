// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/outline_kind.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::app {

namespace {

using shape::Corner;

/// Sagitta of a quarter circle of this radius.
double quarter_sagitta(double radius) { return radius * (1 - std::numbers::sqrt2 / 2); }

/// Counter-clockwise from the lower left; a radius takes two corners, an arc from the first to the second.
std::vector<Corner> rectangle_corners(double w, double h, double radius) {
    if (radius <= 0) return {{{-w / 2, -h / 2}}, {{w / 2, -h / 2}}, {{w / 2, h / 2}}, {{-w / 2, h / 2}}};
    const double x = w / 2;
    const double y = h / 2;
    const double s = quarter_sagitta(radius);
    return {{{-x + radius, -y}}, {{x - radius, -y}, s}, {{x, -y + radius}}, {{x, y - radius}, s},
            {{x - radius, y}},   {{-x + radius, y}, s}, {{-x, y - radius}}, {{-x, -y + radius}, s}};
}

std::vector<Corner> circle_corners(double diameter) {
    const double r = diameter / 2;
    const double s = quarter_sagitta(r);
    return {{{r, 0}, s}, {{0, r}, s}, {{-r, 0}, s}, {{0, -r}, s}};
}

std::vector<Corner> capsule_corners(double length, double width) {
    const double r = width / 2;
    const double x = std::max(0.0, length / 2 - r);
    return {{{-x, -r}}, {{x, -r}, r}, {{x, r}}, {{-x, r}, r}};
}

std::vector<Corner> corners(const shape::Given& given) {
    if (const auto* r = std::get_if<shape::Rectangle>(&given))
        return rectangle_corners(r->width_mm, r->height_mm, r->corner_mm);
    if (const auto* c = std::get_if<shape::Circle>(&given)) return circle_corners(c->diameter_mm);
    if (const auto* c = std::get_if<shape::Capsule>(&given))
        return capsule_corners(c->length_mm, c->width_mm);
    return std::get<shape::Polygon>(given).corners;
}

shape::Box box_of(const Outline& outline) {
    if (const auto* given = std::get_if<shape::Given>(&outline)) {
        const auto contour = shape::contour_of(*given);
        return contour ? shape::bounds(*contour) : shape::Box{{0, 0}, {0, 0}};
    }
    double length = 0;
    double width = 0;
    for (const auto& cylinder : std::get<std::vector<job::Cylinder>>(outline)) {
        length += cylinder.length_mm;
        width = std::max(width, cylinder.diameter_mm);
    }
    return {{-length / 2, -width / 2}, {length / 2, width / 2}};
}

} // namespace

OutlineKind kind_of(const Outline& outline) {
    const auto* given = std::get_if<shape::Given>(&outline);
    if (!given) return OutlineKind::lying;
    if (const auto* r = std::get_if<shape::Rectangle>(given))
        return r->corner_mm > 0 ? OutlineKind::rounded : OutlineKind::rectangle;
    if (std::holds_alternative<shape::Circle>(*given)) return OutlineKind::circle;
    return std::holds_alternative<shape::Capsule>(*given) ? OutlineKind::capsule : OutlineKind::free;
}

OutlineSizes sizes_of(const Outline& outline) {
    if (const auto* given = std::get_if<shape::Given>(&outline))
        if (const auto* r = std::get_if<shape::Rectangle>(given))
            return {r->width_mm, r->height_mm, r->corner_mm > 0 ? std::optional(r->corner_mm) : std::nullopt};
    const shape::Box box = box_of(outline);
    if (!(box.width() > 0) || !(box.height() > 0)) return {};
    return {grained(box.width()), grained(box.height()), {}};
}

std::optional<shape::Given> with_sizes(OutlineKind kind, const OutlineSizes& s) {
    switch (kind) {
    case OutlineKind::rectangle:
        if (s.length_mm && s.width_mm) return shape::Rectangle{*s.length_mm, *s.width_mm, 0};
        break;
    case OutlineKind::rounded:
        if (s.length_mm && s.width_mm && s.corner_mm)
            return shape::Rectangle{*s.length_mm, *s.width_mm, *s.corner_mm};
        break;
    case OutlineKind::circle:
        if (s.length_mm) return shape::Circle{*s.length_mm};
        break;
    case OutlineKind::capsule:
        if (s.length_mm && s.width_mm) return shape::Capsule{*s.length_mm, *s.width_mm};
        break;
    case OutlineKind::free:
    case OutlineKind::lying:
        break;
    }
    return std::nullopt;
}

shape::Polygon corners_of(const Outline& outline) {
    std::vector<Corner> all;
    if (const auto* given = std::get_if<shape::Given>(&outline))
        all = corners(*given);
    else
        all = rectangle_corners(box_of(outline).width(), box_of(outline).height(), 0);
    for (Corner& corner : all)
        corner = {{grained(corner.at.x), grained(corner.at.y)}, grained(corner.sagitta_mm)};
    return {std::move(all)};
}

} // namespace drawercast::app
