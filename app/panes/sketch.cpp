// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/sketch.h"

#include "layout/object_pieces.h"

#include "sheets/paint.h"
#include "sheets/path.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace drawercast::app {

namespace {

struct Part {
    QPainterPath path;
    double depth_mm = 0;
};

std::vector<Part> parts_of(const job::Object& object) {
    std::vector<Part> parts;
    for (const auto& piece : layout::pieces_of(object, object.height_mm))
        parts.push_back({sheets::painter_path(sheets::path_of(piece.contour)), piece.depth_mm});
    return parts;
}

} // namespace

void paint_sketch(QPainter& painter, const QRectF& where, const job::Object& object, bool placed,
                  const theme::Theme& theme) {
    constexpr double full_depth_mm = 60;
    const auto parts = parts_of(object);
    QRectF extent;
    for (const auto& part : parts) extent |= part.path.boundingRect();
    if (extent.isEmpty()) return;
    const double scale = std::min(where.width() / extent.width(), where.height() / extent.height());
    QTransform to_px;
    to_px.translate(where.center().x(), where.center().y());
    to_px.scale(scale, -scale);
    to_px.translate(-extent.center().x(), -extent.center().y());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QPen pen(placed ? theme.ink : theme.ink3, placed ? 1.2 : 1);
    if (!placed) pen.setDashPattern({4, 2});
    painter.setPen(pen);
    for (const auto& part : parts) {
        const double share = std::clamp(part.depth_mm / full_depth_mm, 0.01, 1.0);
        painter.setBrush(placed ? QBrush(theme.depth_wash(share)) : QBrush(Qt::NoBrush));
        painter.drawPath(to_px.map(part.path));
    }
    painter.restore();
}

} // namespace drawercast::app
