// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/menu_paint.h"

#include "theme/frame_paint.h"
#include "theme/palette.h"

#include <QPainter>
#include <QStyleOption>

namespace drawercast::theme {

namespace {

constexpr int side_px = 8;

bool enabled(const QStyleOption& option) { return option.state.testFlag(QStyle::State_Enabled); }

bool pointed_at(const QStyleOptionMenuItem& option) {
    return enabled(option) && option.state.testFlag(QStyle::State_Selected);
}

QRect mirrored(const QStyleOption& option, const QRect& rect) {
    return QStyle::visualRect(option.direction, option.rect, rect);
}

void paint_mark(QPainter& painter, const QStyleOptionMenuItem& option, const Theme& theme,
                const QRect& icon) {
    const QColor sign = enabled(option) ? theme.ink : theme.disabled;
    if (!option.icon.isNull()) {
        if (option.checked) {
            painter.fillRect(icon.adjusted(-3, -3, 3, 3), theme.blue_soft);
            draw_frame(painter, icon.adjusted(-3, -3, 3, 3), theme.line(1), theme.blue);
        }
        option.icon.paint(&painter, icon, Qt::AlignCenter, enabled(option) ? QIcon::Normal : QIcon::Disabled);
        return;
    }
    if (!option.checked) return;
    if (option.checkType == QStyleOptionMenuItem::Exclusive) {
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(sign);
        const qreal inset = icon.width() / 3.0;
        painter.drawEllipse(QRectF(icon).adjusted(inset, inset, -inset, -inset));
        painter.restore();
    } else {
        const qreal inset = icon.width() / 5.0;
        draw_tick(painter, QRectF(icon).adjusted(inset, inset, -inset, -inset), icon.width() / 12.0, sign);
    }
}

} // namespace

void paint_menu(QPainter& painter, const QStyleOption& option, const Theme& theme) {
    painter.fillRect(option.rect, theme.pane);
    draw_frame(painter, option.rect, theme.line(1), theme.edge);
}

void paint_menu_item(QPainter& painter, const QStyleOptionMenuItem& option, int icon_px, const Theme& theme) {
    const QRect rect = option.rect;
    if (option.menuItemType == QStyleOptionMenuItem::Separator) {
        painter.fillRect(QRectF(rect.left() + side_px, rect.center().y(), rect.width() - 2 * side_px, 1),
                         theme.rule);
        if (option.text.isEmpty()) return;
    }
    if (pointed_at(option)) {
        painter.fillRect(rect, theme.blue_soft);
        if (theme.high_contrast) draw_frame(painter, rect, theme.line(1), theme.blue);
    }
    const int column = icon_px + 2 * side_px;
    const QRect icon(rect.left() + side_px, rect.center().y() - icon_px / 2 + 1, icon_px, icon_px);
    paint_mark(painter, option, theme, mirrored(option, icon));

    const QRect words(rect.left() + column, rect.top(), rect.width() - column - side_px - 12, rect.height());
    const int flags = Qt::AlignVCenter | Qt::TextShowMnemonic | Qt::TextSingleLine;
    const qsizetype tab = option.text.indexOf(QLatin1Char('\t'));
    painter.save();
    painter.setFont(option.font);
    painter.setPen(enabled(option) ? theme.ink : theme.disabled);
    painter.drawText(mirrored(option, words), flags | Qt::AlignLeft,
                     tab < 0 ? option.text : option.text.left(tab));
    if (tab >= 0) {
        painter.setPen(enabled(option) ? theme.ink3 : theme.disabled);
        painter.drawText(mirrored(option, words), flags | Qt::AlignRight, option.text.mid(tab + 1));
    }
    painter.restore();
    if (option.menuItemType == QStyleOptionMenuItem::SubMenu) {
        const QRect where =
            mirrored(option, QRect(rect.right() - 12 - side_px / 2, rect.top(), 12, rect.height()));
        draw_arrow(painter, where, option.direction == Qt::RightToLeft ? Pointing::left : Pointing::right, 7,
                   enabled(option) ? theme.ink2 : theme.disabled);
    }
}

void paint_menu_title(QPainter& painter, const QStyleOptionMenuItem& option, const Theme& theme) {
    painter.fillRect(option.rect, pointed_at(option) ? theme.blue_soft : theme.bench);
    if (pointed_at(option) && theme.high_contrast)
        draw_frame(painter, option.rect, theme.line(1), theme.blue);
    painter.save();
    painter.setPen(enabled(option) ? theme.ink : theme.disabled);
    painter.drawText(option.rect, Qt::AlignCenter | Qt::TextShowMnemonic | Qt::TextSingleLine, option.text);
    painter.restore();
}

} // namespace drawercast::theme
