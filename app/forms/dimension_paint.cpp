// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/dimension_paint.h"

#include <QPainter>
#include <QPainterPath>

#include <cmath>

namespace drawercast::app {

namespace {

constexpr double arrow_px = 8;
constexpr double arrow_half_px = 1.6; // 22° in all
constexpr double past_px = 4;         // of an extension line past the dimension line
constexpr double from_edge_px = 3;

/// An arrow head with its tip at `tip`, pointing along `toward` (unit).
void paint_arrow(QPainter& painter, QPointF tip, QPointF toward, const QColor& color) {
    const QPointF back = tip - toward * arrow_px;
    const QPointF side(-toward.y() * arrow_half_px, toward.x() * arrow_half_px);
    QPainterPath head(tip);
    head.lineTo(back + side);
    head.lineTo(back - side);
    head.closeSubpath();
    painter.fillPath(head, color);
}

} // namespace

void paint_dimension(QPainter& painter, QPointF from, QPointF to, double out, const QString& figure,
                     const theme::Theme& theme) {
    const bool level = std::abs(to.x() - from.x()) >= std::abs(to.y() - from.y());
    const QPointF normal = level ? QPointF(0, 1) : QPointF(1, 0);
    const QPointF along = level ? QPointF(1, 0) : QPointF(0, 1);
    if ((level ? from.x() - to.x() : from.y() - to.y()) > 0) std::swap(from, to);
    const double base = level ? std::max(from.y(), to.y()) + out : std::max(from.x(), to.x()) + out;
    const auto on_line = [&](QPointF p) { return level ? QPointF(p.x(), base) : QPointF(base, p.y()); };
    const QPointF a = on_line(from);
    const QPointF b = on_line(to);
    const double size = level ? b.x() - a.x() : b.y() - a.y();

    painter.setPen(QPen(theme.ink2, 1));
    painter.drawLine(from + normal * from_edge_px, a + normal * past_px);
    painter.drawLine(to + normal * from_edge_px, b + normal * past_px);
    const bool arrows_inside = size >= 3 * arrow_px;
    if (arrows_inside) {
        painter.drawLine(a, b);
        paint_arrow(painter, a, -along, theme.ink2);
        paint_arrow(painter, b, along, theme.ink2);
    } else {
        painter.drawLine(a - along * 2 * arrow_px, b + along * 2 * arrow_px);
        paint_arrow(painter, a, along, theme.ink2);
        paint_arrow(painter, b, -along, theme.ink2);
    }
    QRectF box = painter.fontMetrics().boundingRect(figure).adjusted(-3, 0, 3, 0);
    const double room = level ? box.width() : box.height();
    if (arrows_inside && size > room + 2 * arrow_px)
        box.moveCenter((a + b) / 2);
    else if (level)
        box.moveCenter({b.x() + 2 * arrow_px + box.width() / 2, base});
    else
        box.moveCenter({base + past_px + box.width() / 2 + 2, (a.y() + b.y()) / 2});
    painter.fillRect(box, theme.paper);
    painter.setPen(theme.ink);
    painter.drawText(box, Qt::AlignCenter, figure);
}

} // namespace drawercast::app
