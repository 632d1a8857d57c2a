// SPDX-License-Identifier: GPL-3.0-or-later
#include "panes/plot_view.h"

#include "sheets/inking.h"
#include "sheets/paint.h"
#include "theme/theme_of.h"

#include <QPainter>
#include <QResizeEvent>

#include <algorithm>

namespace drawercast::app {

namespace {

constexpr double per_mm = theme::px_per_mm;
constexpr double least_mm = 20;

} // namespace

PlotView::PlotView(int height_px, QWidget* parent) : QWidget(parent), height_px_(height_px) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    hide();
}

void PlotView::show_chart(Make make, const QString& spoken) {
    make_ = std::move(make);
    setAccessibleName(spoken);
    renew();
    setVisible(chart_ != nullptr);
}

shape::Vec PlotView::size_mm() const {
    return {std::max(least_mm, (width() - room_px_) / per_mm), height_px_ / per_mm};
}

void PlotView::renew() {
    chart_.reset();
    if (make_) {
        auto chart = make_(size_mm());
        const double room_px = chart.lower_room_px.x + chart.upper_room_px.x;
        if (room_px != room_px_) { // the first time: else it is made once
            room_px_ = room_px;
            chart = make_(size_mm());
        }
        if (!chart.marks.empty()) chart_ = std::make_unique<Chart>(std::move(chart));
    }
    updateGeometry();
    update();
}

QSize PlotView::sizeHint() const {
    if (!chart_) return {0, 0};
    return {200, height_px_ + static_cast<int>(chart_->lower_room_px.y + chart_->upper_room_px.y)};
}

void PlotView::resizeEvent(QResizeEvent* event) {
    if (event->size().width() != event->oldSize().width()) renew();
}

void PlotView::paintEvent(QPaintEvent*) {
    if (!chart_) return;
    QPainter painter(this);
    const auto& theme = theme::theme_of(this);
    const shape::Vec origin{chart_->lower_room_px.x,
                            chart_->upper_room_px.y + chart_->area.height() * per_mm};
    const sheets::View view{theme::Medium::screen, per_mm, 1, origin};
    auto pane = theme; // words knock out to the pane they stand on
    pane.paper = theme.pane;
    sheets::Inking inking(view, pane);
    for (const auto& mark : chart_->marks) inking.ink(mark);
    painter.setRenderHint(QPainter::Antialiasing);
    sheets::paint(inking.take(), painter);
}

} // namespace drawercast::app
