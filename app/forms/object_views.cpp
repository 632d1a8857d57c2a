// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/object_views.h"

#include "layout/object_pieces.h"

#include "sheets/paint.h"
#include "sheets/path.h"

#include <algorithm>

namespace drawercast::app {

namespace {

/// From the front: a block from the object's top down to the level's depth; a cylinder seen from its end is a
/// disc in a hollow that goes straight down to the axis.
FromSide side_of(const layout::ObjectPiece& piece, double top_mm) {
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
    auto pieces = layout::pieces_of(object, insert_mm);
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const auto& a, const auto& b) { return a.depth_mm < b.depth_mm; });
    for (const auto& piece : pieces) {
        views.box.add(shape::bounds(piece.contour));
        views.greatest_depth_mm = std::max(views.greatest_depth_mm, piece.depth_mm);
    }
    const double top = views.greatest_depth_mm - object.height_mm;
    for (const auto& piece : pieces) {
        views.above.push_back({sheets::painter_path(sheets::path_of(piece.contour)), piece.depth_mm});
        views.side.push_back(side_of(piece, top));
    }
    return views;
}

} // namespace drawercast::app
