// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/squeeze_plot.h"

#include "base/units.h"
#include "casting/gas.h"
#include "plan/say.h"

#include "language/spoken.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;

namespace {

constexpr double panel_gap_mm = 5;
constexpr double over_limit = 2; ///< how far past the limit the plot shows
constexpr double widest_mm = 6;  ///< drills above leave far too much to be worth a line
constexpr double ring_mm = 1.2;
constexpr int fewest = 8; ///< vents the plot reaches at least

struct Line {
    double drill_mm = 0;
    bool own = false; ///< the drill most of the drawer's vents have
    std::vector<air::Squeeze> by_count;
};

struct Plot {
    std::vector<Line> lines;
    int count = 0; ///< vents of the drawer
    int most = 0;
    double width_mm = 1;
    Panel out, held;
    double ml_per_unit = 1, kpa_per_unit = 1;
    double x(double vents) const { return width_mm * vents / most; }
};

double usual_drill(const std::vector<air::Vent>& vents) {
    std::map<double, int> counts;
    for (const auto& vent : vents) ++counts[vent.diameter_mm];
    return std::max_element(counts.begin(), counts.end(),
                            [](const auto& a, const auto& b) { return a.second < b.second; })
        ->first;
}

std::vector<double> drills_of(const job::Job& job, double own) {
    std::vector<double> drills{own};
    for (const double mm : job.shop->drills_mm)
        if (mm >= own - 1 && mm <= std::min(own + 2, widest_mm) && mm == std::floor(mm) && mm != own)
            drills.push_back(mm);
    return drills;
}

Plot plot_of(const job::Job& job, const air::Answer& air, Vec size) {
    Plot plot;
    const auto& vents = air.vented.vents;
    const double own = usual_drill(vents);
    plot.count = static_cast<int>(vents.size());
    plot.most = std::max(fewest, static_cast<int>(std::ceil(plot.count * 1.25)));
    plot.width_mm = size.x;
    for (const auto& choice : air::drill_choices(air.squeeze_in, drills_of(job, own), plot.most)) {
        if (plot.lines.empty() || plot.lines.back().drill_mm != choice.drill_mm)
            plot.lines.push_back({choice.drill_mm, choice.drill_mm == own, {}});
        plot.lines.back().by_count.push_back(choice.squeeze);
    }
    if (job.display_units != job::DisplayUnits::mm) {
        plot.ml_per_unit = units::ml_per_fluid_ounce;
        plot.kpa_per_unit = units::kpa_per_psi;
    }
    double kpa = air.squeeze.held_kpa;
    for (const auto& line : plot.lines)
        if (line.own)
            for (const auto& one : line.by_count) kpa = std::max({kpa, one.held_kpa, one.held_thick_kpa});
    const double limit = air.squeeze.limit_ml / plot.ml_per_unit;
    const double now = air.squeeze.out_ml / plot.ml_per_unit;
    plot.held = {0, (size.y - panel_gap_mm) * 0.36, kpa / plot.kpa_per_unit * 1.15};
    plot.out = {plot.held.top_mm + panel_gap_mm, size.y, std::max(over_limit * limit, 1.25 * now)};
    return plot;
}

/// A curve from no vent at all, cut where it leaves its panel at the top.
template <class Value>
std::vector<Vec> curve(const Plot& plot, const Panel& panel, const Line& line, double at_none, Value value) {
    std::vector<Vec> points{{0, panel.y(std::clamp(at_none, 0.0, panel.most))}};
    double before = at_none;
    for (std::size_t i = 0; i < line.by_count.size(); ++i) {
        const double now = value(line.by_count[i]);
        const double x = static_cast<double>(i) + 1;
        if (now > panel.most) {
            const double share = (panel.most - before) / (now - before);
            points.push_back({plot.x(x - 1 + share), panel.top_mm});
            break;
        }
        points.push_back({plot.x(x), panel.y(std::max(0.0, now))});
        before = now;
    }
    return points;
}

/// Between two curves over the same axis.
void add_band(ChartPen& pen, const Panel& panel, std::vector<Vec> high, std::vector<Vec> low) {
    if (high.back().x < low.back().x) high.push_back({low.back().x, panel.top_mm}); // it left at the top
    std::vector<Vec> ring = std::move(high);
    ring.insert(ring.end(), low.rbegin(), low.rend());
    pen.put(PathMark{polygon(ring), std::nullopt, theme::Wash{theme::WashRole::depth, 0.2}});
}

void add_bands(ChartPen& pen, const Plot& plot) {
    for (const auto& line : plot.lines) {
        if (!line.own) continue;
        const auto out = [&](double times) {
            return curve(plot, plot.out, line, 0,
                         [&](const air::Squeeze& one) { return one.out_ml * times / plot.ml_per_unit; });
        };
        add_band(pen, plot.out, out(2), out(0.5));
    }
}

void add_lines(ChartPen& pen, const job::Job& job, const Plot& plot) {
    for (const auto& line : plot.lines) {
        const auto points = curve(plot, plot.out, line, 0,
                                  [&](const air::Squeeze& one) { return one.out_ml / plot.ml_per_unit; });
        pen.put(PathMark{polyline(points), line.own ? LineRole::pocket_edge : LineRole::thin, std::nullopt});
        const bool out_at_top = points.back().y >= plot.out.top_mm - 1e-9;
        pen.put(TextMark{{points.back(), out_at_top ? Vec{0, 10} : Vec{6, 0}},
                         plan::say_length_bare(line.drill_mm, job.display_units),
                         line.own ? TextRole::depth : TextRole::caption,
                         out_at_top ? Side::center : Side::left,
                         0,
                         false});
    }
}

void add_held(ChartPen& pen, const air::Answer& air, const Plot& plot) {
    casting::GasIn gas = casting::gas_of(air.squeeze_in.mold);
    const double none = casting::gas_kpa(gas) / plot.kpa_per_unit;
    for (const auto& line : plot.lines) {
        if (!line.own) continue;
        const auto of = [&](double air::Squeeze::*which) {
            return curve(plot, plot.held, line, none,
                         [&, which](const air::Squeeze& one) { return one.*which / plot.kpa_per_unit; });
        };
        add_band(pen, plot.held, of(&air::Squeeze::held_thick_kpa), of(&air::Squeeze::held_thin_kpa));
        pen.put(PathMark{polyline(of(&air::Squeeze::held_kpa)), LineRole::pocket_edge, std::nullopt});
    }
}

void add_now(ChartPen& pen, const air::Answer& air, const Plot& plot) {
    const double x = plot.x(plot.count);
    const auto ring = [&](double y) {
        pen.put(
            PathMark{circle({x, y}, ring_mm), LineRole::pocket_edge, theme::Wash{theme::WashRole::paper}});
    };
    ring(plot.out.y(air.squeeze.out_ml / plot.ml_per_unit));
    ring(plot.held.y(air.squeeze.held_kpa / plot.kpa_per_unit));
}

} // namespace

Sheet<OnChart> squeeze_plot(const job::Job& job, const air::Answer& air, Vec size_mm) {
    Sheet<OnChart> sheet;
    sheet.name = "What vents cost";
    sheet.area = {{0, 0}, size_mm};
    sheet.lower_room_px = {42, 50}, sheet.upper_room_px = {26, 24};
    if (air.vented.vents.empty() || !(air.squeeze.limit_ml > 0)) return sheet;
    const Plot plot = plot_of(job, air, size_mm);
    const bool metric = job.display_units == job::DisplayUnits::mm;
    ChartPen pen(sheet);
    pen.turn_to(Layer::ground);
    add_bands(pen, plot);
    const double out_step = even_step(plot.out.most, 4), held_step = even_step(plot.held.most, 3);
    const auto decimals = [](double step) { return step == std::floor(step) ? 0 : step < 0.1 ? 2 : 1; };
    add_panel(pen, plot.out, plot.width_mm, out_step, decimals(out_step),
              metric ? language::tr("squeeze-out, mL").toStdString()
                     : language::tr("squeeze-out, fl oz").toStdString());
    add_panel(pen, plot.held, plot.width_mm, held_step, decimals(held_step),
              metric ? language::tr("pressure held, kPa").toStdString()
                     : language::tr("pressure held, psi").toStdString());
    add_axis(pen, plot.width_mm, plot.most, std::max(1.0, std::ceil(even_step(plot.most, 8))),
             metric ? language::tr("vents; lines by drill in mm").toStdString()
                    : language::tr("vents; lines by drill in inches").toStdString());
    pen.turn_to(Layer::still);
    const double limit_y = plot.out.y(air.squeeze.limit_ml / plot.ml_per_unit);
    pen.put(PathMark{line({0, limit_y}, {plot.width_mm, limit_y}), LineRole::under, std::nullopt});
    pen.put(TextMark{{{plot.width_mm, limit_y}, {-4, 8}},
                     language::tr("mixed for it").toStdString(),
                     TextRole::caption,
                     Side::right,
                     0,
                     true});
    add_lines(pen, job, plot);
    add_held(pen, air, plot);
    add_now(pen, air, plot);
    return sheet;
}

} // namespace drawercast::sheets
