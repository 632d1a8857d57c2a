// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/rise_plot.h"

#include "casting/rise.h"

#include "theme/theme_of.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr int steps = 160;

/// Time and expansion to pixels.
struct Axes {
    QRectF room;
    double end_s = 1;
    double most = 1;
    QPointF at(double t_s, double expansion) const {
        return {room.left() + room.width() * t_s / end_s,
                room.bottom() - room.height() * (expansion - 1) / (most - 1)};
    }
};

QPainterPath path_of(const casting::RiseCurve& curve, const Axes& axes) {
    QPainterPath path(axes.at(0, 1));
    for (int i = 1; i <= steps; ++i) {
        const double t = axes.end_s * i / steps;
        path.lineTo(axes.at(t, casting::expansion_after(curve, t)));
    }
    return path;
}

/// 1, 2 or 5 times a power of ten, about `parts` of them in `whole`.
double round_step(double whole, int parts) {
    const double rough = whole / parts;
    const double ten = std::pow(10, std::floor(std::log10(rough)));
    for (const double times : {1.0, 2.0, 5.0})
        if (times * ten >= rough) return times * ten;
    return 10 * ten;
}

void draw_axes(QPainter& painter, const Axes& axes, const theme::Theme& theme) {
    painter.setPen(QPen(theme.rule, 1));
    const QFontMetrics metrics = painter.fontMetrics();
    const double second = round_step(axes.end_s, 5), fold = round_step(axes.most - 1, 4);
    for (double t = 0; t <= axes.end_s; t += second) {
        painter.setPen(QPen(theme.rule, 1));
        painter.drawLine(axes.at(t, 1), axes.at(t, axes.most));
        painter.setPen(theme.ink2);
        painter.drawText(axes.at(t, 1) + QPointF(2, metrics.ascent() + 2),
                         RisePlot::tr("%1 s").arg(std::lround(t)));
    }
    for (double e = 1; e <= axes.most; e += fold) {
        painter.setPen(QPen(theme.rule, 1));
        painter.drawLine(axes.at(0, e), axes.at(axes.end_s, e));
        painter.setPen(theme.ink2);
        const QString words = QStringLiteral("×%1").arg(e, 0, 'g', 3);
        painter.drawText(
            axes.at(0, e) + QPointF(-metrics.horizontalAdvance(words) - 4, metrics.ascent() / 3.0), words);
    }
}

} // namespace

RisePlot::RisePlot(QWidget* parent) : QWidget(parent) {
    setMinimumHeight(150);
    setAccessibleName(tr("Rise over time, by the label and by the cups"));
}

QSize RisePlot::sizeHint() const { return {520, 170}; }

void RisePlot::set_profiles(std::optional<casting::Profile> label, std::optional<casting::Profile> cup) {
    label_ = std::move(label);
    cup_ = std::move(cup);
    update();
}

void RisePlot::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto& theme = theme::theme_of(this);
    Axes axes;
    axes.room = QRectF(rect()).adjusted(42, 8, -12, -22);
    for (const auto& one : {label_, cup_})
        if (one) {
            axes.end_s = std::max(axes.end_s, 1.08 * one->rise_s);
            axes.most = std::max(axes.most, 1.08 * one->expansion);
        }
    if (axes.most <= 1 || axes.end_s <= 1) return;
    draw_axes(painter, axes, theme);
    if (label_) {
        painter.setPen(QPen(theme.ink3, 1.2, Qt::DashLine));
        for (const auto& curve : casting::rise_curves(*label_, label_->expansion))
            painter.drawPath(path_of(curve, axes));
    }
    if (cup_) {
        painter.setPen(QPen(theme.ink, 2));
        painter.drawPath(path_of(casting::rise_curves(*cup_, cup_->expansion).front(), axes));
    }
}

} // namespace drawercast::app
