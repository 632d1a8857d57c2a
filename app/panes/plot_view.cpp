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

void PlotView::renew() {
    chart_.reset();
    if (make_) {
        const Chart rooms = make_({least_mm, least_mm}); // the room its words take is always the same
        const double wide = width() - rooms.lower_room_px.x - rooms.upper_room_px.x;
        auto chart = make_({std::max(least_mm, wide / per_mm), height_px_ / per_mm});
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
