// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/run_plot.h"

#include <algorithm>

namespace drawercast::app {

using theme::LineRole;

RunPlot::RunPlot(const plan::CostBasis& basis, QWidget* parent) : ChartView(parent) {
    setAccessibleName(tr("Price of each set over the sets of a run"));
    for (int sets = 1; sets <= most_sets; ++sets) each_.push_back(plan::cost_of(basis, sets).each());
}

void RunPlot::set_run(int sets) {
    sets_ = std::clamp(sets, 1, most_sets);
    update();
}

void RunPlot::draw(sheets::ChartPen& pen, sheets::Vec size_mm) const {
    constexpr double past_most = 1.1;
    constexpr double dot_mm = 1.1;
    const double most = past_most * *std::max_element(each_.begin(), each_.end());
    if (!(most > 0)) return;
    const sheets::Panel panel{0, size_mm.y, most};
    const double step = sheets::even_step(most, 5);
    sheets::add_panel(pen, panel, size_mm.x, step, step < 1 ? 2 : 0, tr("price of each set").toStdString());
    sheets::add_axis(pen, size_mm.x, most_sets, sheets::even_step(most_sets, 10),
                     tr("sets in the run, one mold for all").toStdString());
    const auto at = [&](int sets) {
        return sheets::Vec{size_mm.x * sets / most_sets, panel.y(each_[static_cast<std::size_t>(sets - 1)])};
    };
    std::vector<sheets::Vec> points;
    for (int sets = 1; sets <= most_sets; ++sets) points.push_back(at(sets));
    pen.put(sheets::PathMark{sheets::polyline(points), LineRole::pocket_edge, std::nullopt});
    const sheets::Vec here = at(sets_);
    pen.put(sheets::PathMark{sheets::line({here.x, 0}, here), LineRole::under, std::nullopt});
    pen.put(sheets::PathMark{
        sheets::path_of(sheets::Box{{here.x - dot_mm, here.y - dot_mm}, {here.x + dot_mm, here.y + dot_mm}}),
        LineRole::pocket_edge, theme::Wash{theme::WashRole::ink, 0}});
}

} // namespace drawercast::app
