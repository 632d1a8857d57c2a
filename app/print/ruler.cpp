// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/ruler.h"

#include "base/units.h"

namespace drawercast::print {

using sheets::Align;

void write_ruler(sheets::Inks& inks, Vec start, RulerWay way, const theme::Theme& theme) {
    const bool level = way == RulerWay::level;
    const Vec along = level ? Vec{1, 0} : Vec{0, -1};
    const Vec metric_side = level ? Vec{0, -1} : Vec{-1, 0};
    const theme::Pen pen = theme::pen_of(theme::LineRole::thin, theme, theme::Medium::paper, 1);
    const auto at = [&](double along_mm, double off_mm) {
        return start + along * px(along_mm) + metric_side * px(off_mm);
    };
    const auto stroke = [&](const sheets::Path& path) { inks.push_back(sheets::Stroke{path, pen}); };

    constexpr double gap = 0.7; // mm between the two base lines
    // two base lines: each is exactly as long as its words say
    stroke(sheets::line(at(0, 0), at(ruler_mm, 0)));
    stroke(sheets::line(at(0, -gap), at(ruler_in * units::mm_per_inch, -gap)));
    sheets::Path ticks;
    for (int i = 0; i <= static_cast<int>(ruler_mm); ++i) {
        const double tick = i % 10 == 0 ? 3 : i % 5 == 0 ? 2 : 1.2;
        ticks = sheets::joined(std::move(ticks), sheets::line(at(i, 0), at(i, tick)));
    }
    constexpr int parts = 8;
    for (int i = 0; i <= static_cast<int>(ruler_in) * parts; ++i) {
        const double tick = i % parts == 0 ? 3 : i % (parts / 2) == 0 ? 2 : 1.2;
        const double mm = i * units::mm_per_inch / parts;
        ticks = sheets::joined(std::move(ticks), sheets::line(at(mm, -gap), at(mm, -gap - tick)));
    }
    stroke(ticks);
    const theme::Lettering face{theme::Face::bold, 10};
    const double turn = level ? 0 : 90;
    const auto label = [&](const QString& text, double off_mm) {
        const double drop = level ? face.px * theme::capital_share / 2 : 0;
        const double shift = level ? 0 : face.px * theme::capital_share / 2;
        const Vec place = at(ruler_in * units::mm_per_inch + 1.2, off_mm);
        sheets::write_turned(inks, text, {{place.x + shift, place.y + drop}, Align::left, turn}, face,
                             theme.ink);
    };
    label(QStringLiteral("100 mm"), 1.9);
    label(QStringLiteral("4 in"), -2.3);
}

} // namespace drawercast::print
