// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/bar_paint.h"

#include "theme/frame_paint.h"
#include "theme/palette.h"

#include <QPainter>
#include <QStyleOption>

namespace drawercast::theme {

void paint_bench(QPainter& painter, const QRect& rect, const Theme& theme) {
    painter.fillRect(rect, theme.bench);
}

void paint_tool_row(QPainter& painter, const QStyleOptionToolBar& option, const Theme& theme) {
    paint_bench(painter, option.rect, theme);
    const QRectF rect = option.rect;
    painter.fillRect(QRectF(rect.left(), rect.bottom() - 1, rect.width(), 1), theme.rule);
}

void paint_status_line(QPainter& painter, const QRect& rect, const Theme& theme) {
    paint_bench(painter, rect, theme);
    painter.fillRect(QRectF(rect.left(), rect.top(), rect.width(), 1), theme.rule);
}

void paint_tool_separator(QPainter& painter, const QStyleOption& option, const Theme& theme) {
    const QRectF rect = option.rect;
    if (option.state.testFlag(QStyle::State_Horizontal)) {
        const qreal length = qMin<qreal>(rect.height(), 22);
        painter.fillRect(QRectF(int(rect.center().x()), rect.center().y() - length / 2, 1, length),
                         theme.edge);
    } else {
        const qreal length = qMin<qreal>(rect.width(), 22);
        painter.fillRect(QRectF(rect.center().x() - length / 2, int(rect.center().y()), length, 1),
                         theme.edge);
    }
}

void paint_splitter(QPainter& painter, const QStyleOption& option, const Theme& theme) {
    const QRect rect = option.rect;
    const bool side_by_side = option.state.testFlag(QStyle::State_Horizontal);
    painter.fillRect(rect, theme.pane);
    painter.fillRect(side_by_side ? QRect(rect.center().x(), rect.top(), 1, rect.height())
                                  : QRect(rect.left(), rect.center().y(), rect.width(), 1),
                     option.state.testFlag(QStyle::State_MouseOver) ? theme.blue : theme.edge);
}

void paint_size_grip(QPainter& painter, const QStyleOption& option, const Theme& theme) {
    const QRectF rect = option.rect;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme.edge, theme.line(1)));
    for (const qreal reach : {4, 7, 10})
        painter.drawLine(QPointF(rect.right() - 2 - reach, rect.bottom() - 2),
                         QPointF(rect.right() - 2, rect.bottom() - 2 - reach));
    painter.restore();
}

void paint_head_section(QPainter& painter, const QStyleOptionHeader& option, const Theme& theme) {
    const QRectF rect = option.rect;
    const bool held = option.state.testFlag(QStyle::State_Sunken);
    painter.fillRect(rect, held ? theme.blue_soft : theme.pane);
    if (option.orientation == Qt::Horizontal)
        painter.fillRect(QRectF(rect.left(), rect.bottom() - 1, rect.width(), 1), theme.edge);
    else
        painter.fillRect(QRectF(rect.right() - 1, rect.top(), 1, rect.height()), theme.edge);
}

} // namespace drawercast::theme
