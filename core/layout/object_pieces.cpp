// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/object_pieces.h"

#include <cmath>
#include <variant>

namespace drawercast::layout {
namespace {

void add(std::vector<ObjectPiece>& pieces, const shape::Given& given, const shape::Pose& pose, double depth,
         std::optional<double> axis = {}) {
    if (const auto contour = shape::contour_of(given))
        pieces.push_back({shape::placed(*contour, pose), depth, axis});
}

void add(std::vector<ObjectPiece>& pieces, const job::Lying& lying, const shape::Pose& pose) {
    const bool from_end = std::abs(shape::Turn::of_degrees(pose.turn_deg).cosine) < 0.02;
    double length = 0;
    for (const auto& cylinder : lying.cylinders) length += cylinder.length_mm;
    double x = -length / 2;
    for (const auto& cylinder : lying.cylinders) {
        const shape::Pose own{shape::placed({x + cylinder.length_mm / 2, 0}, pose), pose.turn_deg};
        add(pieces, shape::Rectangle{cylinder.length_mm, cylinder.diameter_mm, 0}, own,
            lying.axis_mm + cylinder.diameter_mm / 2, from_end ? std::optional(lying.axis_mm) : std::nullopt);
        x += cylinder.length_mm;
    }
}

} // namespace

std::vector<ObjectPiece> pieces_of(const job::Object& object, double through_mm) {
    std::vector<ObjectPiece> pieces;
    for (const auto& level : object.levels) {
        if (const auto* sunk = std::get_if<job::Sunk>(&level.form))
            add(pieces, sunk->outline, level.pose, sunk->depth_mm);
        else if (const auto* through = std::get_if<job::Through>(&level.form))
            add(pieces, through->outline, level.pose, through_mm);
        else
            add(pieces, std::get<job::Lying>(level.form), level.pose);
    }
    return pieces;
}

} // namespace drawercast::layout
