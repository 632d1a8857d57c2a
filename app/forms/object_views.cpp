// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/object_views.h"

#include "shape/contour.h"

#include "sheets/paint.h"
#include "sheets/path.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace drawercast::app {

namespace {

/// One outline with its depth; a lying round is one for each cylinder.
struct Piece {
    shape::Contour contour; ///< placed in the object's plane
    double depth_mm = 0;
    std::optional<double> axis_mm; ///< of a cylinder seen from its end
};

void add(std::vector<Piece>& pieces, const shape::Given& given, const shape::Pose& pose, double depth,
         std::optional<double> axis = {}) {
    if (const auto contour = shape::contour_of(given))
        pieces.push_back({shape::placed(*contour, pose), depth, axis});
}

void add(std::vector<Piece>& pieces, const job::Lying& lying, const shape::Pose& pose) {
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

std::vector<Piece> pieces_of(const job::Object& object, double insert_mm) {
    std::vector<Piece> pieces;
    for (const auto& level : object.levels) {
        if (const auto* sunk = std::get_if<job::Sunk>(&level.form))
            add(pieces, sunk->outline, level.pose, sunk->depth_mm);
        else if (const auto* through = std::get_if<job::Through>(&level.form))
            add(pieces, through->outline, level.pose, insert_mm);
        else
            add(pieces, std::get<job::Lying>(level.form), level.pose);
    }
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const Piece& a, const Piece& b) { return a.depth_mm < b.depth_mm; });
    return pieces;
}

/// From the front: a block from the object's top down to the level's depth; a cylinder seen from its end is a
/// disc in a hollow that goes straight down to the axis.
FromSide side_of(const Piece& piece, double top_mm) {
    const shape::Box box = shape::bounds(piece.contour);
    FromSide side;
    side.depth_mm = piece.depth_mm;
    if (piece.axis_mm) {
        const QRectF disc(box.min.x, 2 * *piece.axis_mm - piece.depth_mm, box.width(),
                          2 * (piece.depth_mm - *piece.axis_mm));
        side.object.addEllipse(disc);
        side.hollow = side.object;
        if (*piece.axis_mm > 0) side.hollow.addRect(QRectF(box.min.x, 0, box.width(), *piece.axis_mm));
        side.hollow = side.hollow.simplified();
    } else {
        side.hollow.addRect(QRectF(box.min.x, 0, box.width(), std::max(0.0, piece.depth_mm)));
        if (piece.depth_mm > top_mm)
            side.object.addRect(QRectF(box.min.x, top_mm, box.width(), piece.depth_mm - top_mm));
    }
    return side;
}

} // namespace

ObjectViews object_views(const job::Object& object, double insert_mm) {
    ObjectViews views;
    views.height_mm = object.height_mm;
    const auto pieces = pieces_of(object, insert_mm);
    for (const Piece& piece : pieces) {
        views.box.add(shape::bounds(piece.contour));
        views.greatest_depth_mm = std::max(views.greatest_depth_mm, piece.depth_mm);
    }
    const double top = views.greatest_depth_mm - object.height_mm;
    for (const Piece& piece : pieces) {
        views.above.push_back({sheets::painter_path(sheets::path_of(piece.contour)), piece.depth_mm});
        views.side.push_back(side_of(piece, top));
    }
    return views;
}

} // namespace drawercast::app
