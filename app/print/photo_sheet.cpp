// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/photo_sheet.h"

#include "base/units.h"

#include "language/spoken.h"
#include "print/title_block.h"
#include "sheets/path.h"

#include <algorithm>
#include <cmath>

namespace drawercast::print {

using sheets::Align;
using theme::Face;
using theme::LineRole;

namespace {

constexpr double frame_inset_mm = capture::field_inset_mm - 0.8; // outside the field, line and all
constexpr double clear_of_mark_mm = 4;                           // no tick meets a mark's tip
constexpr double beside_mark_mm = capture::target_tip_mm + 4;    // words start this far from a mark's middle
constexpr double scale_start_mm = 30;                            // from the sheet's edge, level scales
constexpr double scale_past_mark_mm = 30;                        // upright ones, so that their words miss it

using language::tr;

/// Filled by the even-odd rule: the hole is paper, the dot in it ink again.
void write_mark(sheets::Inks& inks, Vec at, bool dotted, const theme::Theme& theme) {
    constexpr double tip = capture::target_tip_mm;
    std::vector<Vec> tips{at + Vec{0, -tip}, at + Vec{tip, 0}, at + Vec{0, tip}, at + Vec{-tip, 0}};
    for (Vec& p : tips) p = px(p);
    auto path = sheets::joined(sheets::polygon(tips), sheets::circle(px(at), px(capture::target_hole_mm)));
    if (dotted) path = sheets::joined(std::move(path), sheets::circle(px(at), px(capture::target_dot_mm)));
    inks.push_back(sheets::Fill{std::move(path), theme.ink});
}

/// A scale on one side of the frame, its ticks away from the field.
struct Scale {
    Vec start; ///< mm
    Vec along, outward;
    double step_mm = 1;
    int steps = 100;
    int middle = 5; ///< every so many steps a longer tick,
    int large = 10; ///< and a yet longer one
    QString words;
};

/// `marks`: how far along the scale the targets stand.
void write_scale(sheets::Inks& inks, const Scale& scale, const std::vector<double>& marks,
                 const theme::Theme& theme) {
    const theme::Pen pen = theme::pen_of(LineRole::thin, theme, theme::Medium::paper, 1);
    const auto at = [&](double along, double out) {
        return px(scale.start + scale.along * along + scale.outward * out);
    };
    const double length = scale.step_mm * scale.steps;
    inks.push_back(sheets::Stroke{sheets::line(at(0, 0), at(length, 0)), pen});
    sheets::Path ticks;
    for (int i = 0; i <= scale.steps; ++i) {
        const double along = i * scale.step_mm;
        const bool covered = std::any_of(marks.begin(), marks.end(), [&](double mark) {
            return std::abs(mark - along) < clear_of_mark_mm;
        });
        if (covered) continue;
        const bool end = i == 0 || i == scale.steps;
        const double tick = end ? 4 : i % scale.large == 0 ? 2.6 : i % scale.middle == 0 ? 1.9 : 1.2;
        ticks = sheets::joined(std::move(ticks), sheets::line(at(along, 0), at(along, tick)));
    }
    inks.push_back(sheets::Stroke{std::move(ticks), pen});
    const theme::Lettering face{Face::bold, 9};
    const double high = face.px * theme::capital_share / theme::px_per_mm;
    const bool upright = scale.along.x == 0;
    // level words stand above or hang below their ticks, upright ones beside them, read from the right
    const double off = 4.8 + (scale.outward.y > 0 || scale.outward.x > 0 ? high : 0);
    sheets::write_turned(inks, scale.words, {at(length, off), Align::center, upright ? 90.0 : 0.0}, face,
                         theme.ink);
    sheets::write_turned(inks, QStringLiteral("0"), {at(0, off), Align::center, upright ? 90.0 : 0.0}, face,
                         theme.ink);
}

void write_scales(sheets::Inks& inks, const Box& frame, const std::vector<Vec>& places,
                  const theme::Theme& theme) {
    const double low = places[8].y + scale_past_mark_mm;
    const double eighth = units::mm_per_inch / 8;
    const std::vector<double> level{places[4].x - scale_start_mm};
    const std::vector<double> upright{low - places[8].y, low - places[6].y};
    const QString metric = tr("100 mm"), inches = tr("4 in");
    write_scale(inks, {{scale_start_mm, frame.min.y}, {1, 0}, {0, -1}, 1, 100, 5, 10, metric}, level, theme);
    write_scale(inks, {{scale_start_mm, frame.max.y}, {1, 0}, {0, 1}, eighth, 32, 4, 8, inches}, level,
                theme);
    write_scale(inks, {{frame.min.x, low}, {0, -1}, {-1, 0}, 1, 100, 5, 10, metric}, upright, theme);
    write_scale(inks, {{frame.max.x, low}, {0, -1}, {1, 0}, eighth, 32, 4, 8, inches}, upright, theme);
}

struct Line {
    QString words;
    bool head = false;
};

/// Lines right of a mark, between the sheet's edge and the scale's figures.
void write_lines(sheets::Inks& inks, Vec mark, const std::vector<Line>& lines, const theme::Theme& theme) {
    double y = mark.y - (lines.front().head ? 5 : 0.8);
    for (const Line& line : lines) {
        const theme::Lettering face =
            line.head ? theme::Lettering{Face::bold, 14} : theme::Lettering{Face::regular, 9};
        sheets::write(inks, line.words, px(Vec{mark.x + beside_mark_mm, y}), face, theme.ink);
        y += line.head ? 4 : 3.2;
    }
}

} // namespace

capture::SheetSize photo_sheet_size(Paper paper) {
    return paper == Paper::letter ? capture::sheet_letter : capture::sheet_a4;
}

Page photo_sheet(Paper paper, const Printing& printing) {
    const auto sheet = photo_sheet_size(paper);
    const theme::Theme theme = theme::printed_theme();
    const auto places = capture::target_places(sheet);
    const bool letter = sheet == capture::sheet_letter;
    Page page{{sheet.width_mm, sheet.height_mm}, {}, tr("Measuring sheet for photos")};
    for (std::size_t i = 0; i < places.size(); ++i)
        write_mark(page.inks, places[i], capture::target_dotted(sheet, i), theme);
    const Box around = Box{{0, 0}, page.size_mm}.grown(-frame_inset_mm);
    frame(page.inks, px(around), LineRole::thin, theme);
    write_scales(page.inks, around, places, theme);
    write_lines(page.inks, places[0],
                {{letter ? tr("Measuring sheet, Letter") : tr("Measuring sheet, A4"), true},
                 {tr("Lay objects inside the frame, apart from each other.")},
                 {tr("Cover no mark. Tape the sheet to a flat board.")}},
                theme);
    write_lines(page.inks, places[4],
                {{tr("Print at 100 %"), true},
                 {tr("100 mm must measure 100 mm, along and across;")},
                 {tr("else the outlines are wrong by as much.")}},
                theme);
    write_lines(page.inks, places[3],
                {{tr("Camera straight above or nearly, half a meter away,")},
                 {tr("the whole sheet sharp in the photo. Even light,")},
                 {tr("no flash: a shadow with a sharp edge counts as object.")}},
                theme);
    write_lines(page.inks, places[5],
                {{tr("Measure each object's height, and from lens to sheet.")},
                 {tr("Check one outline with a caliper before you cut.")},
                 {printing.program}},
                theme);
    return page;
}

} // namespace drawercast::print
