// SPDX-License-Identifier: GPL-3.0-or-later
// What the canvas says while a sheet is of an older job, or can't be drawn at all.
#include "plan/sentences.h"

#include "canvas/sheet_canvas.h"
#include "document/document.h"
#include "language/in_words.h"

#include <QPainter>

namespace drawercast::app {

namespace {

constexpr int ribbon_px = 26;
constexpr double pitch_px = 9; ///< of the hatching that says "old"

} // namespace

QRect SheetCanvas::ribbon() const { return {0, 0, width(), ribbon_px}; }

void SheetCanvas::set_progress(double done) {
    progress_ = done;
    if (!spec_of(shown_).slow) return;
    update(ribbon());
    if (!still_drawn_) redraw(); // its words tell how far it is
}

/// What an unfit sheet lacks: the mends in its way are named.
QStringList SheetCanvas::missing() const {
    const auto& spec = spec_of(shown_);
    if (spec.slow && document_.building().busy())
        return {tr("Working it out…"),
                tr("air, plate and cuts: %1 %").arg(static_cast<int>(progress_ * 100))};
    QStringList lines{sheet_words(spec.name), sheet_words(spec.missing)};
    constexpr int most = 3;
    int said = 0;
    if (const auto* plan = drawer_plan())
        for (const auto& check : plan->checks)
            if (layout::to_mend(check) && said++ < most)
                lines << in_words(plan::sentence(check, document_.shown()));
    return lines;
}

/// Hatched, with words on a plate: never by color alone.
void SheetCanvas::paint_ribbon(QPainter& painter) const {
    if (!shows_old()) return;
    const QRect area = ribbon();
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.fillRect(area, theme_.pane);
    painter.setPen(QPen(theme_.ink3, theme_.line(1)));
    for (double x = -ribbon_px; x < width(); x += pitch_px * 1.414)
        painter.drawLine(QPointF(x, ribbon_px), QPointF(x + ribbon_px, 0));
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(theme_.edge);
    painter.drawLine(0, ribbon_px - 1, width(), ribbon_px - 1);
    const QString words = tr("As it was before the last change; working it out again, %1 %")
                              .arg(static_cast<int>(progress_ * 100));
    const int wide = painter.fontMetrics().horizontalAdvance(words) + 20;
    const QRect plate(qMax(0, (width() - wide) / 2), 0, wide, ribbon_px - 1);
    painter.fillRect(plate, theme_.pane);
    painter.setPen(theme_.ink);
    painter.drawText(plate, Qt::AlignCenter, words);
    painter.restore();
}

} // namespace drawercast::app
