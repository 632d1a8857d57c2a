// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/rise_plot.h"

#include "casting/rise.h"

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

using theme::LineRole;

constexpr int steps = 160;
constexpr double past_rise = 1.08; ///< how far the plot goes on

void add_curve(sheets::ChartPen& pen, const casting::RiseCurve& curve, const sheets::Panel& panel,
               double width_mm, double end_s, LineRole role) {
    std::vector<sheets::Vec> points;
    for (int i = 0; i <= steps; ++i) {
        const double share = static_cast<double>(i) / steps;
        points.push_back({width_mm * share, panel.y(casting::expansion_after(curve, end_s * share))});
    }
    pen.put(sheets::PathMark{sheets::polyline(points), role, std::nullopt});
}

} // namespace

RisePlot::RisePlot(QWidget* parent) : ChartView(parent) {
    setAccessibleName(tr("Rise over time, by the label and by the cups"));
}

void RisePlot::set_profiles(std::optional<casting::Profile> label, std::optional<casting::Profile> cup) {
    label_ = std::move(label);
    cup_ = std::move(cup);
    update();
}

void RisePlot::draw(sheets::ChartPen& pen, sheets::Vec size_mm) const {
    double end_s = 1, most = 1;
    for (const auto& one : {label_, cup_})
        if (one) {
            end_s = std::max(end_s, past_rise * one->rise_s);
            most = std::max(most, past_rise * one->expansion);
        }
    if (most <= 1 || end_s <= 1) return;
    const sheets::Panel panel{0, size_mm.y, most};
    sheets::add_panel(pen, panel, size_mm.x, std::ceil(sheets::even_step(most, 5)), 0,
                      tr("times the liquid; dashed: by the label").toStdString());
    sheets::add_axis(pen, size_mm.x, end_s, sheets::even_step(end_s, 8),
                     tr("seconds from the start of mixing").toStdString());
    if (label_)
        for (const auto& curve : casting::rise_curves(*label_, label_->expansion))
            add_curve(pen, curve, panel, size_mm.x, end_s, LineRole::under);
    if (cup_)
        add_curve(pen, casting::rise_curves(*cup_, cup_->expansion).front(), panel, size_mm.x, end_s,
                  LineRole::pocket_edge);
}

} // namespace drawercast::app
