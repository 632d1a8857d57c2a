// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/gauge.h"

#include "language/spoken.h"
#include "sheets/table.h"

#include <algorithm>

namespace drawercast::summary {

using sheets::Align;
using theme::Face;
using theme::Lettering;

void write_gauge(sheets::Inks& inks, Vec top_left, double width, const Gauge& gauge,
                 const theme::Theme& theme) {
    const Lettering plain{Face::regular, 11}, bold{Face::bold, 11};
    const double base = top_left.y + 11, y = top_left.y + 19;
    double right = top_left.x + width;
    const auto put_right = [&](const QString& text, const Lettering& face, const QColor& color) {
        sheets::write(inks, text, {right, base}, face, color, Align::right);
        right -= sheets::written_width(text, face) + 5;
    };
    put_right(gauge.limit, plain, theme.ink3);
    put_right(gauge.value, bold, gauge.breached ? theme.red : theme.ink);
    const QString label = gauge.decides ? gauge.label + language::tr(", decides") : gauge.label;
    sheets::write(inks, sheets::elided(label, plain, right - top_left.x), {top_left.x, base}, plain,
                  theme.ink2);

    // the limit stands short of the end where the bar may go past it
    const double past = gauge.at_least || gauge.share > 1 ? 0.86 : 1.0;
    const double limit_x = top_left.x + width * past - 4, zero_x = top_left.x + 4;
    const double end_x =
        std::min(zero_x + (limit_x - zero_x) * std::max(0.0, gauge.share), top_left.x + width);
    const auto stroke = [&](const sheets::Path& path, const QColor& color, double w) {
        inks.push_back(sheets::Stroke{path, {color, w, {}}});
    };
    stroke(sheets::line({zero_x, y}, {std::max(limit_x, end_x), y}), theme.edge, 1);
    stroke(sheets::line({zero_x, y}, {end_x, y}), gauge.breached ? theme.red : theme.ink,
           gauge.decides ? 4 : 3);
    for (const double x : {zero_x, limit_x})
        stroke(sheets::line(Vec{x - 4, y + 4}, Vec{x + 4, y - 4}), theme.ink, 1);
}

void write_key_figure(sheets::Inks& inks, Vec top_left, const QString& caption, const QString& figure,
                      const theme::Theme& theme) {
    const Lettering large{Face::medium, 19}, small{Face::regular, 11};
    sheets::write(inks, caption, top_left + Vec{0, 10}, small, theme.ink2);
    const auto blank = figure.lastIndexOf(QLatin1Char(' '));
    const QString number = blank < 0 ? figure : figure.left(blank);
    sheets::write(inks, number, top_left + Vec{0, 30}, large, theme.ink);
    if (blank < 0) return;
    const double x = top_left.x + sheets::written_width(number, large) + 4;
    sheets::write(inks, figure.mid(blank + 1), {x, top_left.y + 30}, small, theme.ink2);
}

} // namespace drawercast::summary
