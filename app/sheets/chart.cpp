// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/chart.h"

#include "plan/say.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace drawercast::sheets {

using theme::LineRole;
using theme::TextRole;

namespace {

constexpr double words_apart_mm = 4.5; ///< between the upright words of two events
constexpr double leader_mm = 4;        ///< from their lines up to their words

} // namespace

double even_step(double most, int count) {
    constexpr double rounding = 1e-9;
    if (!(most > 0)) return 1;
    const double least = most / count;
    const double power = std::pow(10, std::floor(std::log10(least)));
    for (const double nice : std::array{1.0, 2.0, 2.5, 5.0})
        if (nice * power >= least * (1 - rounding)) return nice * power;
    return 10 * power;
}

void add_panel(ChartPen& pen, const Panel& panel, double width_mm, double step, int decimals,
               const std::string& caption) {
    constexpr double rounding = 1e-9;
    for (int i = 0; step * i <= panel.most * (1 + rounding); ++i) {
        const double y = panel.y(step * i);
        if (i > 0) pen.put(PathMark{line({0, y}, {width_mm, y}), LineRole::rule, std::nullopt});
        pen.put(TextMark{
            {{0, y}, {-6, 0}}, plan::fixed(step * i, decimals), TextRole::caption, Side::right, 0, false});
    }
    pen.put(
        PathMark{path_of(Box{{0, panel.bottom_mm}, {width_mm, panel.top_mm}}), LineRole::thin, std::nullopt});
    pen.put(TextMark{{{0, panel.top_mm}, {8, -12}}, caption, TextRole::name, Side::left, 0, true});
}

void add_axis(ChartPen& pen, double width_mm, double most, double tick, const std::string& caption) {
    constexpr double rounding = 1e-9;
    constexpr double tick_mm = 1.2;
    for (int i = 0; tick * i <= most * (1 + rounding); ++i) {
        const double x = width_mm * tick * i / most;
        pen.put(PathMark{line({x, 0}, {x, -tick_mm}), LineRole::thin, std::nullopt});
        pen.put(TextMark{{{x, -tick_mm}, {0, -11}},
                         plan::fixed(tick * i, tick < 1 ? 1 : 0),
                         TextRole::caption,
                         Side::center,
                         0,
                         false});
    }
    pen.put(
        TextMark{{{width_mm / 2, -tick_mm}, {0, -27}}, caption, TextRole::caption, Side::center, 0, false});
}

void add_events(ChartPen& pen, std::vector<ChartEvent> events, double bottom_mm, double top_mm) {
    std::stable_sort(events.begin(), events.end(),
                     [](const ChartEvent& a, const ChartEvent& b) { return a.x_mm < b.x_mm; });
    double next = -1e9;
    for (const ChartEvent& event : events) {
        const double at = std::max(event.x_mm, next);
        next = at + words_apart_mm;
        pen.put(PathMark{polyline({{event.x_mm, bottom_mm}, {event.x_mm, top_mm}, {at, top_mm + leader_mm}}),
                         event.bold ? LineRole::pocket_edge : LineRole::soft, std::nullopt});
        pen.put(TextMark{{{at, top_mm + leader_mm}, {0, 4}},
                         event.words,
                         event.bold ? TextRole::depth : TextRole::caption,
                         Side::left,
                         90,
                         false});
    }
}

} // namespace drawercast::sheets
