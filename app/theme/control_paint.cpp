// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/control_paint.h"

#include "theme/frame_paint.h"
#include "theme/palette.h"

#include <QPainter>
#include <QStyle>
#include <QStyleOption>

namespace drawercast::theme {

namespace {

constexpr qreal focus_px = 2;
constexpr qreal bar_px = 3;

bool has(const QStyleOption& option, QStyle::StateFlag flag) { return option.state.testFlag(flag); }

bool pointed_at(const QStyleOption& option) {
    return has(option, QStyle::State_MouseOver) && has(option, QStyle::State_Enabled);
}

QColor border_color(const QStyleOption& option, const Theme& theme) {
    if (!has(option, QStyle::State_Enabled)) return theme.rule;
    return pointed_at(option) ? theme.blue : theme.edge;
}

/// The middle of a check box or radio button, kept square.
QRectF box_of(const QStyleOption& option) {
    const int side = qMin(option.rect.width(), option.rect.height());
    const QRect box = QStyle::alignedRect(Qt::LeftToRight, Qt::AlignCenter, {side, side}, option.rect);
    return QRectF(box);
}

} // namespace

void paint_field(QPainter& painter, const QStyleOption& option, const Theme& theme) {
    painter.fillRect(option.rect, has(option, QStyle::State_Enabled) ? theme.base : theme.pane);
    if (has(option, QStyle::State_HasFocus))
        draw_frame(painter, option.rect, focus_px, theme.blue);
    else
        draw_frame(painter, option.rect, theme.line(1), border_color(option, theme));
}

void paint_view_frame(QPainter& painter, const QStyleOption& option, const Theme& theme) {
    if (has(option, QStyle::State_HasFocus))
        draw_frame(painter, option.rect, focus_px, theme.blue);
    else
        draw_frame(painter, option.rect, theme.line(1),
                   has(option, QStyle::State_Enabled) ? theme.edge : theme.rule);
}

void paint_button(QPainter& painter, const QStyleOptionButton& option, const Theme& theme) {
    const bool on = has(option, QStyle::State_On) || has(option, QStyle::State_Sunken);
    const bool flat = option.features.testFlag(QStyleOptionButton::Flat);
    if (flat && !on && !pointed_at(option) && !has(option, QStyle::State_HasFocus)) return;
    QColor ground = has(option, QStyle::State_Enabled) ? theme.base : theme.pane;
    if (on || pointed_at(option)) ground = theme.blue_soft;
    painter.fillRect(option.rect, ground);
    if (has(option, QStyle::State_HasFocus))
        draw_frame(painter, option.rect, focus_px, theme.blue);
    else if (on)
        draw_frame(painter, option.rect, theme.line(1), theme.blue);
    else if (option.features.testFlag(QStyleOptionButton::DefaultButton) &&
             has(option, QStyle::State_Enabled))
        draw_frame(painter, option.rect, focus_px, theme.ink);
    else
        draw_frame(painter, option.rect, theme.line(1), border_color(option, theme));
}

void paint_tool_button(QPainter& painter, const QStyleOption& option, const Theme& theme) {
    const bool on = has(option, QStyle::State_On) || has(option, QStyle::State_Sunken);
    if (on || pointed_at(option)) painter.fillRect(option.rect, theme.blue_soft);
    if (has(option, QStyle::State_HasFocus))
        draw_frame(painter, option.rect, focus_px, theme.blue);
    else if (on || (pointed_at(option) && theme.high_contrast))
        draw_frame(painter, option.rect, theme.line(1),
                   has(option, QStyle::State_Enabled) ? theme.blue : theme.rule);
}

void paint_check_box(QPainter& painter, const QStyleOption& option, const Theme& theme) {
    const QRectF box = box_of(option);
    const QColor sign = has(option, QStyle::State_Enabled) ? theme.ink : theme.disabled;
    painter.fillRect(box, has(option, QStyle::State_Enabled) ? theme.base : theme.pane);
    draw_frame(painter, box, theme.line(1), border_color(option, theme));
    const qreal inset = box.width() / 5;
    const QRectF inside = box.adjusted(inset, inset, -inset, -inset);
    if (has(option, QStyle::State_On)) draw_tick(painter, inside, box.width() / 7, sign);
    if (has(option, QStyle::State_NoChange)) // some of several: a bar, as neither tick nor blank is true
        painter.fillRect(QRectF(inside.left(), inside.center().y() - 1, inside.width(), 2), sign);
}

void paint_radio_button(QPainter& painter, const QStyleOption& option, const Theme& theme) {
    const QRectF box = box_of(option).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(has(option, QStyle::State_Enabled) ? theme.base : theme.pane);
    painter.setPen(QPen(border_color(option, theme), theme.line(1)));
    painter.drawEllipse(box);
    if (has(option, QStyle::State_On)) {
        const qreal inset = box.width() * 0.28;
        painter.setPen(Qt::NoPen);
        painter.setBrush(has(option, QStyle::State_Enabled) ? theme.ink : theme.disabled);
        painter.drawEllipse(box.adjusted(inset, inset, -inset, -inset));
    }
    painter.restore();
}

void paint_focus(QPainter& painter, const QStyleOption& option, const Theme& theme) {
    draw_frame(painter, option.rect, focus_px, theme.blue);
}

void paint_row(QPainter& painter, const QStyleOptionViewItem& option, bool in_focus, bool starts_row,
               const Theme& theme) {
    if (option.backgroundBrush.style() != Qt::NoBrush) painter.fillRect(option.rect, option.backgroundBrush);
    if (!has(option, QStyle::State_Selected)) {
        if (pointed_at(option)) painter.fillRect(option.rect, theme.pane);
        return;
    }
    if (in_focus) painter.fillRect(option.rect, theme.blue_soft);
    if (theme.high_contrast) { // without a wash, lines along the row say how far it goes
        const QRectF row = option.rect;
        painter.fillRect(QRectF(row.left(), row.top(), row.width(), 1), in_focus ? theme.blue : theme.ink);
        painter.fillRect(QRectF(row.left(), row.bottom() - 1, row.width(), 1),
                         in_focus ? theme.blue : theme.ink);
    }
    if (!starts_row) return;
    QRectF bar = option.rect;
    bar.setWidth(bar_px);
    if (option.direction == Qt::RightToLeft) bar.moveRight(QRectF(option.rect).right());
    painter.fillRect(bar, in_focus ? theme.blue : theme.ink);
}

void paint_hint(QPainter& painter, const QStyleOption& option, const Theme& theme) {
    painter.fillRect(option.rect, theme.base);
    draw_frame(painter, option.rect, theme.line(1), theme.ink);
}

} // namespace drawercast::theme
