// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/bar_paint.h"
#include "theme/frame_paint.h"
#include "theme/palette.h"

#include <QPainter>
#include <QStyleOption>

namespace drawercast::theme {

namespace {

constexpr qreal lid_px = 2.5;
constexpr qreal step_px = 4; // how much lower the tabs behind stand
constexpr int icon_gap_px = 8;

bool shown(const QStyleOptionTab& option) { return option.state.testFlag(QStyle::State_Selected); }

QRectF body_of(const QStyleOptionTab& option) {
    QRectF body = option.rect;
    if (!shown(option)) body.setTop(body.top() + step_px);
    return body.adjusted(0, 0, -1, 0); // a gap to the next one
}

/// Where words and icon go: beside the number's box and the tab's own widgets.
QRect room_of(const QStyleOptionTab& option, bool numbered) {
    QRect room = body_of(option).toRect().adjusted(10, 0, -10, 0);
    if (numbered) room.setLeft(option.rect.left() + tab_number_width(option.fontMetrics.height()) + 10);
    if (!option.leftButtonSize.isEmpty()) room.setLeft(room.left() + option.leftButtonSize.width() + 4);
    if (!option.rightButtonSize.isEmpty()) room.setRight(room.right() - option.rightButtonSize.width() - 4);
    return room;
}

QColor ink_of(const QStyleOptionTab& option, const Theme& theme) {
    if (!option.state.testFlag(QStyle::State_Enabled)) return theme.disabled;
    return shown(option) ? theme.ink : theme.ink2;
}

} // namespace

int tab_number_width(int font_height) { return font_height + 4; }

void paint_tab(QPainter& painter, const QStyleOptionTab& option, const Theme& theme, bool numbered) {
    const QRectF body = body_of(option);
    const bool pointed_at = option.state.testFlag(QStyle::State_MouseOver);
    QColor ground = shown(option) ? theme.paper : theme.pane;
    if (!shown(option) && pointed_at && option.state.testFlag(QStyle::State_Enabled))
        ground = theme.blue_soft;
    painter.fillRect(body.adjusted(0, 0, 0, shown(option) ? 0 : -1), ground);

    const QColor side = shown(option) ? theme.edge : theme.rule;
    painter.fillRect(QRectF(body.left(), body.top(), 1, body.height() - (shown(option) ? 0 : 1)), side);
    painter.fillRect(QRectF(body.right() - 1, body.top(), 1, body.height() - (shown(option) ? 0 : 1)), side);
    painter.fillRect(QRectF(body.left(), body.top(), body.width(), shown(option) ? lid_px : 1),
                     shown(option) ? theme.ink : side);
    if (numbered) {
        const qreal x = body.left() + tab_number_width(option.fontMetrics.height());
        painter.fillRect(QRectF(x, body.top(), 1, body.height() - 1), side);
    }
    if (option.state.testFlag(QStyle::State_HasFocus) && shown(option))
        draw_frame(painter, body.adjusted(1, lid_px, -1, 0), 2, theme.blue);
}

void paint_tab_label(QPainter& painter, const QStyleOptionTab& option, const Theme& theme, bool numbered) {
    painter.save();
    painter.setPen(ink_of(option, theme));
    if (numbered) {
        QRect box = body_of(option).toRect();
        box.setWidth(tab_number_width(option.fontMetrics.height()));
        painter.drawText(box, Qt::AlignCenter, QString::number(option.tabIndex + 1));
    }
    QFont font = painter.font();
    font.setBold(shown(option));
    painter.setFont(font);
    const QRect room = room_of(option, numbered);
    const QSize icon = option.icon.isNull() ? QSize(0, 0) : option.iconSize;
    const int words_width = qMin(painter.fontMetrics().size(Qt::TextShowMnemonic, option.text).width(),
                                 room.width() - (icon.isEmpty() ? 0 : icon.width() + icon_gap_px));
    const QRect words(room.left(), room.top(), words_width, room.height());
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextShowMnemonic, option.text);
    if (!icon.isEmpty()) {
        const QRect where(words.right() + icon_gap_px, room.center().y() - icon.height() / 2, icon.width(),
                          icon.height());
        option.icon.paint(&painter, where, Qt::AlignCenter,
                          option.state.testFlag(QStyle::State_Enabled) ? QIcon::Normal : QIcon::Disabled);
    }
    painter.restore();
}

void paint_tab_base(QPainter& painter, const QRect& rect, const Theme& theme) {
    painter.fillRect(QRectF(rect.left(), rect.bottom(), rect.width(), 1), theme.edge);
}

} // namespace drawercast::theme
