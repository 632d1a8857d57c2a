// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/chart_view.h"

#include "sheets/inking.h"
#include "sheets/paint.h"
#include "theme/theme_of.h"

#include <QPainter>

namespace drawercast::app {

namespace {

constexpr int left_px = 44, right_px = 14, top_px = 6, bottom_px = 40; ///< room for figures and words

} // namespace

ChartView::ChartView(QWidget* parent) : QWidget(parent) { setMinimumHeight(150); }

QSize ChartView::sizeHint() const { return {460, 200}; }

void ChartView::paintEvent(QPaintEvent*) {
    const QRect room = rect().adjusted(left_px, top_px, -right_px, -bottom_px);
    if (room.width() <= 0 || room.height() <= 0) return;
    sheets::Sheet<sheets::OnChart> sheet;
    sheets::ChartPen pen(sheet);
    draw(pen, {room.width() / theme::px_per_mm, room.height() / theme::px_per_mm});
    const sheets::View view{theme::Medium::screen,
                            theme::px_per_mm,
                            1,
                            {static_cast<double>(room.left()), static_cast<double>(room.bottom() + 1)}};
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    sheets::paint(sheets::ink_of(sheet.marks, view, theme::theme_of(this)), painter);
}

} // namespace drawercast::app
