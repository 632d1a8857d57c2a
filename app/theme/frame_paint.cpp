// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/frame_paint.h"

#include <QPainter>
#include <QPolygonF>

namespace drawercast::theme {

void draw_frame(QPainter& painter, const QRectF& rect, qreal width, const QColor& color) {
    const qreal inner = rect.height() - 2 * width;
    painter.fillRect(QRectF(rect.left(), rect.top(), rect.width(), width), color);
    painter.fillRect(QRectF(rect.left(), rect.bottom() - width, rect.width(), width), color);
    painter.fillRect(QRectF(rect.left(), rect.top() + width, width, inner), color);
    painter.fillRect(QRectF(rect.right() - width, rect.top() + width, width, inner), color);
}

void draw_arrow(QPainter& painter, const QRectF& rect, Pointing pointing, qreal size, const QColor& color) {
    const qreal half = size / 2;
    const qreal depth = size / 4; // half of the height: as wide as twice high
    const QPointF middle = rect.center();
    const auto at = [&](qreal across, qreal along) {
        switch (pointing) {
        case Pointing::up:
            return middle + QPointF(across, -along);
        case Pointing::down:
            return middle + QPointF(across, along);
        case Pointing::left:
            return middle + QPointF(-along, across);
        case Pointing::right:
            break;
        }
        return middle + QPointF(along, across);
    };
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    painter.drawPolygon(QPolygonF{at(-half, -depth), at(half, -depth), at(0, depth)});
    painter.restore();
}

void draw_tick(QPainter& painter, const QRectF& rect, qreal width, const QColor& color) {
    const auto at = [&](qreal x, qreal y) {
        return QPointF(rect.left() + x * rect.width(), rect.top() + y * rect.height());
    };
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(color, width, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawPolyline(QPolygonF{at(0.1, 0.5), at(0.4, 0.8), at(0.9, 0.2)});
    painter.restore();
}

} // namespace drawercast::theme
