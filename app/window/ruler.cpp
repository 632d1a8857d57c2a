// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/ruler.h"

#include "base/units.h"

#include "language/say.h"
#include "theme/theme_of.h"

#include <QPaintEvent>
#include <QPainter>

#include <cmath>

namespace drawercast::app {

namespace {
constexpr double least_figure_px = 56;
constexpr int figure_reach_px = 28; ///< from its tick
} // namespace

RulerSteps ruler_steps(double px_per_mm, job::DisplayUnits units, double least_px) {
    const double unit_mm = units == job::DisplayUnits::mm ? 1 : units::mm_per_inch;
    const double least = least_px / (px_per_mm * unit_mm);
    if (units != job::DisplayUnits::mm && least <= 1)
        for (const double part : {0.125, 0.25, 0.5, 1.0})
            if (part >= least) return {part * unit_mm, part == 1.0 ? 8 : 4};
    double power = std::pow(10, std::floor(std::log10(least)));
    if (units == job::DisplayUnits::mm) power = std::max(power, 1.0);
    for (const double times : {1.0, 2.0, 5.0, 10.0})
        if (times * power >= least * (1 - 1e-9))
            return {times * power * unit_mm, times == 2.0 ? 4 : (times == 5.0 ? 5 : 10)};
    return {10 * power * unit_mm, 10};
}

Ruler::Ruler(Qt::Orientation orientation, QWidget* parent) : QWidget(parent), orientation_(orientation) {
    if (orientation == Qt::Horizontal)
        setFixedHeight(thickness_px);
    else
        setFixedWidth(thickness_px);
    setAttribute(Qt::WA_OpaquePaintEvent);
}

void Ruler::show(const Shown& shown) {
    if (shown == shown_) return;
    shown_ = shown;
    update();
}

void Ruler::set_pointer(std::optional<double> mm) {
    if (mm == pointer_) return;
    update_tick();
    pointer_ = mm;
    update_tick();
}

void Ruler::update_tick() {
    if (!pointer_) return;
    const int at = static_cast<int>(std::floor(to_px(*pointer_)));
    update(orientation_ == Qt::Horizontal ? QRect(at - 2, 0, 5, height()) : QRect(0, at - 2, width(), 5));
}

double Ruler::to_px(double mm) const {
    return orientation_ == Qt::Horizontal ? shown_.view.to_px(shape::Vec{mm, 0}).x()
                                          : shown_.view.to_px(shape::Vec{0, mm}).y();
}

double Ruler::to_mm(double px) const {
    return orientation_ == Qt::Horizontal ? shown_.view.to_mm({px, 0}).x : shown_.view.to_mm({0, px}).y;
}

void Ruler::paint_tick(QPainter& painter, double px, int length) const {
    const double at = std::floor(px) + 0.5;
    if (orientation_ == Qt::Horizontal)
        painter.drawLine(QPointF(at, height() - length), QPointF(at, height()));
    else
        painter.drawLine(QPointF(width() - length, at), QPointF(width(), at));
}

void Ruler::paint_figure(QPainter& painter, double px, const QString& figure) const {
    const double wide = painter.fontMetrics().horizontalAdvance(figure) + 2;
    const int end = orientation_ == Qt::Horizontal ? width() : height();
    if (px < wide / 2 || px > end - wide / 2) return; // half a figure is another figure
    painter.save();
    if (orientation_ == Qt::Horizontal) {
        painter.drawText(QRectF(px - wide / 2, 0, wide, height() - 6), Qt::AlignCenter, figure);
    } else { // read from the right, as dimensions are
        painter.translate(0, px);
        painter.rotate(-90);
        painter.drawText(QRectF(-wide / 2, 0, wide, width() - 6), Qt::AlignCenter, figure);
    }
    painter.restore();
}

void Ruler::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    const auto& theme = theme::theme_of(this);
    painter.fillRect(event->rect(), theme.pane);
    const bool level = orientation_ == Qt::Horizontal;
    if (shown_.extent) {
        const double from = to_px(level ? shown_.extent->min.x : shown_.extent->min.y);
        const double to = to_px(level ? shown_.extent->max.x : shown_.extent->max.y);
        painter.fillRect(level ? QRectF(from, 0, to - from, height()) : QRectF(0, to, width(), from - to),
                         theme.blue_soft);
    }
    QFont small = font();
    small.setPixelSize(qMax(12, qRound(QFontInfo(font()).pixelSize() * 12.0 / 13.0)));
    painter.setFont(small);
    painter.setPen(theme.ink2);
    const auto steps = ruler_steps(shown_.view.px_per_mm(), shown_.units, least_figure_px);
    const QRect part =
        event->rect().adjusted(-figure_reach_px, -figure_reach_px, figure_reach_px, figure_reach_px);
    const double a = to_mm(level ? part.left() : part.top()), b = to_mm(level ? part.right() : part.bottom());
    const double first = std::min(a, b), last = std::max(a, b);
    const double tick_mm = steps.figure_mm / steps.ticks;
    for (auto tick = static_cast<long long>(std::floor(first / tick_mm));
         static_cast<double>(tick) * tick_mm <= last; ++tick) {
        const double mm = static_cast<double>(tick) * tick_mm;
        const bool figure = tick % steps.ticks == 0;
        paint_tick(painter, to_px(mm), figure ? 7 : 4);
        if (figure) paint_figure(painter, to_px(mm), language::say_length_bare(mm, shown_.units));
    }
    if (pointer_) {
        painter.setPen(QPen(theme.blue, 1.25));
        paint_tick(painter, to_px(*pointer_), thickness_px);
    }
    painter.setPen(theme.edge);
    if (orientation_ == Qt::Horizontal)
        painter.drawLine(0, height() - 1, width(), height() - 1);
    else
        painter.drawLine(width() - 1, 0, width() - 1, height());
}

} // namespace drawercast::app
