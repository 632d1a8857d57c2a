// SPDX-License-Identifier: GPL-3.0-or-later
#include "language/spoken.h"
#include "sheets/inking.h"

#include <cmath>
#include <numbers>

namespace drawercast::sheets {

using theme::LineRole;

/// Extension lines from 3 px off the edge to 4 px past the line; figure in a gap on the line, read from below
/// or from the right; where the line is short, arrows and figure stand outside.
void Inking::add(const DimensionMark& mark) {
    const Vec a0 = view_(mark.from), b0 = view_(mark.to);
    const Vec out = view_.at(mark.out.mm, mark.out.px) - view_.origin;
    const Vec a = a0 + out, b = b0 + out;
    const double span = length(b - a);
    if (span == 0) return;
    const Vec along = (b - a) * (1 / span);
    if (length(out) > 0) {
        const Vec away = out * (1 / length(out));
        stroke(joined(line(a0 + away * px(3), a + away * px(4)), line(b0 + away * px(3), b + away * px(4))),
               LineRole::thin);
    }
    const theme::Lettering face = lettering(theme::TextRole::figure);
    const QString text = language::figures(mark.text);
    const double width = written_width(text, face), gap = width / 2 + px(4);
    const QColor ink = theme_.ink2;

    // readable from below and from the right
    double turn_deg = std::atan2(-(b.y - a.y), b.x - a.x) * 180 / std::numbers::pi;
    if (turn_deg > 90 + 1e-6 || turn_deg <= -90 + 1e-6) turn_deg += turn_deg > 0 ? -180 : 180;
    const shape::Turn turn = shape::Turn::of_degrees(turn_deg);
    const Vec down{turn.sine, turn.cosine};
    const Vec drop = down * (face.px * theme::capital_share / 2);
    const Vec middle = a + (b - a) * mark.figure_at;

    const bool outside = span < 2 * gap + px(20);
    if (!outside) {
        stroke(joined(line(a, middle - along * gap), line(middle + along * gap, b)), LineRole::thin);
        arrow_head(a, along * -1, ink);
        arrow_head(b, along, ink);
        write_turned(inks_, text, {middle + drop, Align::center, turn_deg}, face, ink);
        return;
    }
    stroke(joined(line(a - along * px(14), a), line(b, b + along * px(14))), LineRole::thin);
    stroke(line(a, b), LineRole::thin);
    arrow_head(a, along, ink);
    arrow_head(b, along * -1, ink);
    write_turned(inks_, text, {b + along * (px(18) + width / 2) + drop, Align::center, turn_deg}, face, ink);
}

void Inking::add(const CenterMark& mark) {
    const shape::Turn turn = shape::Turn::of_degrees(mark.turn_deg);
    const double past = 7 * view_.per_px / view_.per_mm;
    const Vec x = turn({mark.half_mm.x + past, 0}), y = turn({0, mark.half_mm.y + past});
    // from the center outward, so that the crossing is drawn in full whatever the dashes
    Path cross;
    for (const Vec reach : {x, x * -1, y, y * -1})
        cross = joined(std::move(cross), line(mark.center, mark.center + reach));
    stroke(view_(cross), LineRole::center);
}

} // namespace drawercast::sheets
