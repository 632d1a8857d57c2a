// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/complex_paint.h"

#include "theme/control_paint.h"
#include "theme/frame_paint.h"
#include "theme/palette.h"

#include <QPainter>
#include <QStyleOption>

namespace drawercast::theme {

namespace {

/// 7 px beside 13 px words.
qreal arrow_px(const QStyleOption& option) { return option.fontMetrics.height() * 0.44; }

bool enabled(const QStyleOption& option) { return option.state.testFlag(QStyle::State_Enabled); }

bool is_at(const QStyleOptionComplex& option, QStyle::SubControl part) {
    return enabled(option) && option.activeSubControls.testFlag(part);
}

} // namespace

void paint_combo_box(QPainter& painter, const QStyleOptionComboBox& option, const QRect& arrow,
                     const Theme& theme) {
    if (option.frame) paint_field(painter, option, theme);
    draw_arrow(painter, arrow, Pointing::down, arrow_px(option),
               enabled(option) ? theme.ink2 : theme.disabled);
}

void paint_spin_box(QPainter& painter, const QStyleOptionSpinBox& option, const QRect& up, const QRect& down,
                    const Theme& theme) {
    if (option.frame) paint_field(painter, option, theme);
    if (option.buttonSymbols == QAbstractSpinBox::NoButtons) return;
    const auto arrow = [&](const QRect& where, Pointing way, QStyle::SubControl part, bool open) {
        if (open && is_at(option, part)) painter.fillRect(where, theme.blue_soft);
        const bool can = open && enabled(option);
        draw_arrow(painter, where, way, arrow_px(option), can ? theme.ink2 : theme.disabled);
    };
    arrow(up, Pointing::up, QStyle::SC_SpinBoxUp,
          option.stepEnabled.testFlag(QAbstractSpinBox::StepUpEnabled));
    arrow(down, Pointing::down, QStyle::SC_SpinBoxDown,
          option.stepEnabled.testFlag(QAbstractSpinBox::StepDownEnabled));
}

void paint_slider(QPainter& painter, const QStyleOptionSlider& option, const QRect& groove,
                  const QRect& handle, const Theme& theme) {
    const bool level = option.orientation == Qt::Horizontal;
    const QColor done = enabled(option) ? theme.ink : theme.disabled;
    const auto line = [&](qreal from, qreal to, qreal width, const QColor& color) {
        const qreal middle = level ? groove.center().y() + 0.5 : groove.center().x() + 0.5;
        const qreal start = qMin(from, to);
        const qreal length = qMax(from, to) - start;
        painter.fillRect(level ? QRectF(start, middle - width / 2, length, width)
                               : QRectF(middle - width / 2, start, width, length),
                         color);
    };
    const qreal low = level ? groove.left() : groove.top();
    const qreal high = level ? groove.right() + 1 : groove.bottom() + 1;
    const qreal now = level ? handle.center().x() : handle.center().y();
    line(low, high, theme.line(1), theme.edge);
    line(option.upsideDown ? high : low, now, 3, done);

    const bool held = is_at(option, QStyle::SC_SliderHandle) && option.state.testFlag(QStyle::State_Sunken);
    painter.fillRect(handle, held || is_at(option, QStyle::SC_SliderHandle) ? theme.blue_soft : theme.base);
    if (option.state.testFlag(QStyle::State_HasFocus))
        draw_frame(painter, handle, 2, theme.blue);
    else
        draw_frame(painter, handle, theme.line(1), done);
}

void paint_scroll_bar(QPainter& painter, const QStyleOptionSlider& option, const QRect& handle,
                      const Theme& theme) {
    painter.fillRect(option.rect, theme.pane);
    if (option.minimum == option.maximum || !enabled(option)) return;
    const bool level = option.orientation == Qt::Horizontal;
    const int inset = 2;
    const QRect bar = level ? handle.adjusted(1, inset, -1, -inset) : handle.adjusted(inset, 1, -inset, -1);
    painter.fillRect(bar, is_at(option, QStyle::SC_ScrollBarSlider) ? theme.ink2 : theme.edge);
}

QRect scroll_bar_part(const QStyleOptionSlider& option, QStyle::SubControl part, int least) {
    const bool level = option.orientation == Qt::Horizontal;
    const int whole = level ? option.rect.width() : option.rect.height();
    const qint64 range = qint64(option.maximum) - option.minimum;
    int length = whole;
    if (range > 0)
        length = qBound(qMin(least, whole), int(qint64(option.pageStep) * whole / (range + option.pageStep)),
                        whole);
    const int start = QStyle::sliderPositionFromValue(option.minimum, option.maximum, option.sliderPosition,
                                                      whole - length, option.upsideDown);
    const auto stretch = [&](int from, int to) {
        const QRect along = level ? QRect(from, 0, to - from, option.rect.height())
                                  : QRect(0, from, option.rect.width(), to - from);
        return QStyle::visualRect(option.direction, option.rect, along.translated(option.rect.topLeft()));
    };
    switch (part) {
    case QStyle::SC_ScrollBarSlider:
        return stretch(start, start + length);
    case QStyle::SC_ScrollBarSubPage:
        return stretch(0, start);
    case QStyle::SC_ScrollBarAddPage:
        return stretch(start + length, whole);
    case QStyle::SC_ScrollBarGroove:
        return option.rect;
    default:
        return {}; // no arrows, no first and last
    }
}

void paint_progress(QPainter& painter, const QStyleOptionProgressBar& option, const Theme& theme) {
    const qint64 range = qint64(option.maximum) - option.minimum;
    if (range <= 0) return; // of unknown length: the words have to do, as nothing here moves by itself
    const qreal share =
        qreal(qBound(option.minimum, option.progress, option.maximum) - option.minimum) / qreal(range);
    const qreal border = theme.line(1);
    QRectF done = QRectF(option.rect).adjusted(border, border, -border, -border);
    done.setWidth(done.width() * share);
    painter.fillRect(done, theme.blue_soft);
    painter.fillRect(QRectF(done.right() - 2, done.top(), qMin<qreal>(2, done.width()), done.height()),
                     theme.blue);
}

} // namespace drawercast::theme
