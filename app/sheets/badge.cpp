// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/badge.h"

#include <algorithm>

namespace drawercast::sheets {

using layout::Severity;

namespace {

struct Colors {
    QColor fill, line, figure;
};

Colors colors_of(const CheckTag& tag, const theme::Theme& theme) {
    const bool mend = tag.severity == Severity::mend;
    if (tag.severity == Severity::note) return {theme.paper, theme.ink, theme.ink};
    const QColor line = mend ? theme.mend_fill : theme.look_line;
    if (tag.left_as_is) return {theme.paper, line, theme.ink};
    return {mend ? theme.mend_fill : theme.look_fill, line, mend ? theme.mend_figure : theme.look_figure};
}

Path shape_of(Severity severity, Vec center, double r) {
    switch (severity) {
    case Severity::mend:
        return path_of(Box{center - Vec{r, r}, center + Vec{r, r}});
    case Severity::look:
        return polygon({center + Vec{0, -r * 1.1}, center + Vec{r * 1.15, r}, center + Vec{-r * 1.15, r}});
    case Severity::note:
        break;
    }
    return circle(center, r);
}

} // namespace

void write_badge(Inks& inks, Vec center, double px, const CheckTag& tag, theme::Lettering face,
                 const theme::Theme& theme) {
    const bool triangle = tag.severity == Severity::look; // its middle is low and narrow
    const bool wide = tag.number > 9;
    const double r = (triangle && wide ? 9.6 : 8.0) * px;
    const Colors colors = colors_of(tag, theme);
    const Path shape = shape_of(tag.severity, center, r);
    inks.push_back(Fill{shape, colors.fill});
    inks.push_back(Stroke{shape, {colors.line, 1.3 * px, {}}});
    constexpr double least_px = 9.5; // 1.8 mm capitals on paper
    if (triangle || wide) face.px = std::max(face.px * 0.86, least_px * px);
    const double capital = face.px * theme::capital_share;
    const Vec base = center + Vec{0, triangle ? r - 1.7 * px : capital / 2};
    write(inks, QString::number(tag.number), base, face, colors.figure, Align::center);
    if (!tag.left_as_is) return;
    const Vec corner = center + Vec{0.7 * r, 0.45 * r};
    const Path check = polyline({corner, corner + Vec{2.2 * px, 3.6 * px}, corner + Vec{7 * px, -3.6 * px}});
    inks.push_back(Stroke{check, {theme.paper, 4.2 * px, {}}});
    inks.push_back(Stroke{check, {theme.ink, 1.8 * px, {}}});
}

} // namespace drawercast::sheets
