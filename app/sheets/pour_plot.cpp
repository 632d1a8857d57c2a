// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/pour_plot.h"

#include "base/units.h"
#include "plan/plate_stage.h"
#include "plan/say.h"

#include "language/spoken.h"

#include <algorithm>
#include <cmath>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;

namespace {

constexpr double step_s = 0.5;
constexpr double past_rise = 1.12; ///< how far the plot goes on
constexpr double panel_gap_mm = 4;

struct Plot {
    std::vector<mold::Moment> moments;
    mold::Closing closing;
    int closures = 0;
    double end_s = 1;
    double width_mm = 1;
    Panel rise, pressure, count;
    double kpa_per_unit = 1;

    double x(double t_s) const { return width_mm * t_s / end_s; }
};

/// As many figures as stand side by side.
int ticks(double width_mm) { return std::clamp(static_cast<int>(width_mm / 13), 2, 12); }

Plot plot_of(const job::Job& job, const plan::DrawerPlan& plan, const mold::PlateIn& in, Vec size) {
    Plot plot;
    const mold::Pattern pattern = mold::pattern_of(in, plan.plate->answer);
    plot.closures = pattern.count;
    plot.closing = plan.plate->closing;
    const double closed_s = plot.closing.plate_on_s + plot.closing.close_s;
    const double last = std::max(plan.times->rise_s, closed_s) * past_rise;
    const double tick = even_step(last, ticks(size.x));
    plot.end_s = tick * std::ceil(last / tick);
    plot.width_mm = size.x;
    plot.moments = mold::moments_of(in.closing, pattern, step_s, plot.end_s);
    if (job.display_units != job::DisplayUnits::mm) plot.kpa_per_unit = units::kpa_per_psi;
    double rise = 1, kpa = 1e-6, needed = pattern.count;
    for (const auto& moment : plot.moments) {
        rise = std::max(rise, moment.expansion);
        kpa = std::max({kpa, moment.expected_kpa, moment.build_for_kpa});
        needed = std::max(needed, static_cast<double>(moment.needed));
    }
    const double room = (size.y - 2 * panel_gap_mm) / 10;
    plot.count = {0, 3.5 * room, needed * 1.08};
    plot.pressure = {plot.count.top_mm + panel_gap_mm, plot.count.top_mm + panel_gap_mm + 3.5 * room,
                     kpa / plot.kpa_per_unit * 1.08};
    plot.rise = {plot.pressure.top_mm + panel_gap_mm, size.y, rise * 1.08};
    return plot;
}

template <class Value>
void add_curve(ChartPen& pen, const Plot& plot, const Panel& panel, LineRole role, Value value) {
    std::vector<Vec> points;
    for (const auto& moment : plot.moments) points.push_back({plot.x(moment.t_s), panel.y(value(moment))});
    pen.put(PathMark{polyline(points), role, std::nullopt});
}

/// A stair: it goes up at its moment, not before.
template <class Value>
void add_stairs(ChartPen& pen, const Plot& plot, LineRole role, Value value) {
    std::vector<Vec> points;
    for (const auto& moment : plot.moments) {
        const Vec at{plot.x(moment.t_s), plot.count.y(value(moment))};
        if (!points.empty() && points.back().y != at.y) points.push_back({at.x, points.back().y});
        if (points.size() > 1 && points.back().y == at.y && points[points.size() - 2].y == at.y)
            points.back() = at;
        else
            points.push_back(at);
    }
    pen.put(PathMark{polyline(points), role, std::nullopt});
}

/// The need where it is not met.
void add_late(ChartPen& pen, const Plot& plot) {
    std::vector<Vec> points;
    const auto flush = [&] {
        if (points.size() > 1) pen.put(PathMark{polyline(points), LineRole::mend_end, std::nullopt});
        points.clear();
    };
    for (const auto& moment : plot.moments) {
        if (moment.needed > moment.in)
            points.push_back({plot.x(moment.t_s), plot.count.y(moment.needed)});
        else
            flush();
    }
    flush();
}

void add_panels(ChartPen& pen, const job::Job& job, const Plot& plot) {
    const bool metric = job.display_units == job::DisplayUnits::mm;
    const auto decimals = [](double step) { return step == std::floor(step) ? 0 : 1; };
    const double rise_step = std::ceil(even_step(plot.rise.most, 4)),
                 kpa_step = even_step(plot.pressure.most, 4),
                 count_step = std::max(1.0, std::ceil(even_step(plot.count.most, 4)));
    add_panel(pen, plot.rise, plot.width_mm, rise_step, 0,
              language::tr("rise, times the liquid").toStdString());
    add_panel(pen, plot.pressure, plot.width_mm, kpa_step, decimals(kpa_step),
              metric ? language::tr("pressure, kPa: expected; dashed: to build for").toStdString()
                     : language::tr("pressure, psi: expected; dashed: to build for").toStdString());
    add_panel(pen, plot.count, plot.width_mm, count_step, 0,
              language::tr("closures: thick line tight, dashed needed").toStdString());
}

void add_moments(ChartPen& pen, const job::Job& job, const plan::DrawerPlan& plan, const Plot& plot) {
    const double mix_s = job.foam->mix_s, poured_s = mix_s + plan.dose->pour_s;
    std::vector<ChartEvent> events;
    const auto add = [&](double t_s, const QString& what, bool bold = false) {
        if (t_s > 0 && t_s <= plot.end_s)
            events.push_back({plot.x(t_s), what.toStdString() + " " + plan::fixed(t_s, 0), bold});
    };
    add(mix_s, language::tr("mixed"));
    add(poured_s, language::tr("poured"));
    add(plot.closing.plate_on_s, language::tr("plate on", "a moment of the pour"));
    add(plan.times->pot_life_s, language::tr("pot life"));
    add(plot.closing.plate_on_s + plot.closing.close_s, language::tr("all in"));
    add(plan.times->touch_s, language::tr("reaches plate"), true);
    add(plan.times->contact_s, language::tr("mold full"), true);
    add(plan.times->rise_s, language::tr("risen"));
    add_events(pen, std::move(events), 0, plot.rise.top_mm);
}

} // namespace

Sheet<OnChart> pour_plot(const job::Job& job, const plan::DrawerPlan& plan, Vec size_mm) {
    Sheet<OnChart> sheet;
    sheet.name = "The pour by seconds";
    sheet.area = {{0, 0}, size_mm};
    sheet.lower_room_px = {42, 50}, sheet.upper_room_px = {18, 118};
    const auto in = plan::plate_in(job, plan);
    if (!plan.plate || !in) return sheet;
    const Plot plot = plot_of(job, plan, *in, size_mm);
    ChartPen pen(sheet);
    pen.turn_to(Layer::ground);
    add_moments(pen, job, plan, plot); // below the panels' captions, which knock out what crosses them
    add_panels(pen, job, plot);
    add_axis(pen, plot.width_mm, plot.end_s, even_step(plot.end_s, ticks(plot.width_mm)),
             language::tr("seconds from the start of mixing").toStdString());
    pen.turn_to(Layer::still);
    add_curve(pen, plot, plot.rise, LineRole::pocket_edge,
              [](const mold::Moment& moment) { return moment.expansion; });
    add_curve(pen, plot, plot.pressure, LineRole::pocket_edge,
              [&](const mold::Moment& moment) { return moment.expected_kpa / plot.kpa_per_unit; });
    add_curve(pen, plot, plot.pressure, LineRole::under,
              [&](const mold::Moment& moment) { return moment.build_for_kpa / plot.kpa_per_unit; });
    add_stairs(pen, plot, LineRole::cavity_edge,
               [](const mold::Moment& moment) { return static_cast<double>(moment.in); });
    add_stairs(pen, plot, LineRole::under,
               [](const mold::Moment& moment) { return static_cast<double>(moment.needed); });
    add_late(pen, plot);
    return sheet;
}

} // namespace drawercast::sheets
