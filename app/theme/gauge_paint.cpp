// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/gauge_paint.h"

#include "theme/palette.h"

#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace drawercast::theme {

namespace {

constexpr qreal gap_px = 6;

QFont bold(QFont font) {
    font.setBold(true);
    return font;
}

/// Words ending at `right`; returns where they start.
qreal words_before(QPainter& painter, const QRectF& line, qreal right, const QString& words,
                   const QFont& font, const QColor& ink) {
    const qreal width = QFontMetricsF(font).horizontalAdvance(words);
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(QRectF(right - width, line.top(), width + 1, line.height()),
                     Qt::AlignLeft | Qt::AlignVCenter, words);
    return right - width;
}

/// The checker's filled square with "!", ending at `right`; returns where it starts.
qreal warning_before(QPainter& painter, const QRectF& line, qreal right, const QFont& font,
                     const Theme& theme) {
    const qreal side = std::round(line.height() * 0.8);
    const QRectF square(right - side, std::round(line.center().y() - side / 2), side, side);
    painter.fillRect(square, theme.mend_fill);
    painter.setFont(font);
    painter.setPen(theme.mend_figure);
    painter.drawText(square, Qt::AlignCenter, QStringLiteral("!"));
    return square.left();
}

void paint_words(QPainter& painter, const QRectF& line, const Gauge& gauge, const Theme& theme) {
    const QFont plain = painter.font();
    const QFont strong = bold(plain);
    qreal right = words_before(painter, line, line.right(), gauge.limit, plain, theme.ink3) - gap_px;
    right = words_before(painter, line, right, gauge.value, strong, gauge.breached ? theme.red : theme.ink) -
            gap_px;
    if (gauge.breached) right = warning_before(painter, line, right, strong, theme) - gap_px;

    const QFontMetricsF metrics(plain);
    const qreal mark =
        gauge.decides.isEmpty() ? 0 : QFontMetricsF(strong).horizontalAdvance(gauge.decides) + gap_px;
    const QString label =
        metrics.elidedText(gauge.label, Qt::ElideRight, qMax(0.0, right - line.left() - mark));
    painter.setFont(plain);
    painter.setPen(theme.ink2);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, label);
    if (mark > 0) {
        const qreal end = line.left() + metrics.horizontalAdvance(label) + mark;
        words_before(painter, line, end, gauge.decides, strong, theme.ink);
    }
}

void paint_line(QPainter& painter, const QRectF& rect, qreal y, const Gauge& gauge, const Theme& theme) {
    const qreal inset = 4; // half a tick
    const qreal share = qMax(0.0, gauge.share);
    const qreal whole = rect.width() - 2 * inset;
    const qreal limit =
        share > 1 ? whole / qMin(share, 2.0) : whole; // twice the limit fills the line, more does too
    const qreal bar = qMin(whole, share * limit);
    const qreal left = rect.left() + inset;
    const qreal thick = gauge.decides.isEmpty() ? 3 : 4;
    painter.fillRect(QRectF(rect.left(), y - theme.line(1) / 2, rect.width(), theme.line(1)), theme.edge);
    painter.fillRect(QRectF(left, y - thick / 2, bar, thick), gauge.breached ? theme.red : theme.ink);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme.ink2, theme.line(1.25)));
    for (const qreal x : {left, left + limit})
        painter.drawLine(QPointF(x - inset, y + inset), QPointF(x + inset, y - inset));
}

} // namespace

int gauge_height(const QFontMetrics& metrics) { return metrics.height() + 12; }

void paint_gauge(QPainter& painter, const QRectF& rect, const Gauge& gauge, const Theme& theme) {
    const qreal words = QFontMetricsF(painter.font()).height();
    painter.save();
    paint_words(painter, QRectF(rect.left(), rect.top(), rect.width(), words), gauge, theme);
    paint_line(painter, rect, std::floor(rect.top() + words + 5) + 0.5, gauge, theme);
    painter.restore();
}

void paint_old_answer(QPainter& painter, const QRectF& rect, const Theme& theme) {
    constexpr qreal pitch = 9;
    const qreal step = pitch * std::sqrt(2.0); // along the edge, for lines `pitch` apart
    painter.save();
    painter.setClipRect(rect, Qt::IntersectClip);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme.ink3, theme.line(1)));
    const qreal first = std::floor((rect.left() + rect.top()) / step) * step;
    for (qreal sum = first; sum <= rect.right() + rect.bottom(); sum += step) // the points with x + y = sum
        painter.drawLine(QPointF(sum - rect.bottom(), rect.bottom()), QPointF(sum - rect.top(), rect.top()));
    painter.restore();
}

} // namespace drawercast::theme
