// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/stale_ribbon.h"

#include "language/spoken.h"

#include <numbers>

namespace drawercast::app {

namespace {

constexpr int ribbon_px = 26;
constexpr double pitch_px = 9; ///< of the hatching that says "old"

} // namespace

QRect ribbon_area(int width) { return {0, 0, width, ribbon_px}; }

void paint_ribbon(QPainter& painter, int width, double done, const theme::Theme& theme) {
    const QRect area = ribbon_area(width);
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.fillRect(area, theme.pane);
    painter.setPen(QPen(theme.ink3, theme.line(1)));
    const double step = pitch_px * std::numbers::sqrt2;
    const int lines = static_cast<int>((width + ribbon_px) / step) + 1;
    for (int i = 0; i < lines; ++i) {
        const double x = i * step - ribbon_px;
        painter.drawLine(QPointF(x, ribbon_px), QPointF(x + ribbon_px, 0));
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(theme.edge);
    painter.drawLine(0, ribbon_px - 1, width, ribbon_px - 1);
    const QString words = language::tr("As it was before the last change; working it out again, %1 %")
                              .arg(static_cast<int>(done * 100));
    const int wide = painter.fontMetrics().horizontalAdvance(words) + 20;
    const QRect plate(qMax(0, (width - wide) / 2), 0, wide, ribbon_px - 1);
    painter.fillRect(plate, theme.pane);
    painter.setPen(theme.ink);
    painter.drawText(plate, Qt::AlignCenter, words);
    painter.restore();
}

} // namespace drawercast::app
