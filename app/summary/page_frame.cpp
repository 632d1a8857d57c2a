// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/page_frame.h"

#include "job/fingerprint.h"

#include "language/say.h"
#include "language/spoken.h"
#include "print/title_block.h"
#include "sheets/signs.h"

namespace drawercast::summary {

using print::px;
using theme::Face;
using theme::LineRole;

namespace {

constexpr double block_mm = 23;

/// ISO 5457: 20 mm on the left for filing, 10 elsewhere.
Box border_of(Vec size_mm) {
    const double margin = print::safe_margin_mm;
    return px(Box{{2 * margin, margin}, size_mm - Vec{margin, margin}});
}

void write_centering_marks(sheets::Inks& inks, const Box& border, Vec size, const theme::Theme& theme) {
    const double out = px(3.5); // kept off the paper's edge, which printers do not reach
    const Vec c = size * 0.5;
    for (const auto& [at, way] : {std::pair{Vec{c.x, border.min.y}, Vec{0, -1}},
                                  {Vec{c.x, border.max.y}, Vec{0, 1}},
                                  {Vec{border.min.x, c.y}, Vec{-1, 0}},
                                  {Vec{border.max.x, c.y}, Vec{1, 0}}})
        print::rule(inks, at, at + way * out, LineRole::border, theme);
}

print::TitleCell frame_cell() {
    print::TitleCell cell;
    cell.share = 1.5;
    cell.draw = [](sheets::Inks& inks, const Box& box) {
        const theme::Theme theme = theme::printed_theme();
        inks.push_back(
            sheets::Fill{sheets::frame_sign({box.min.x + 7, box.center().y}, 20, false), theme.ink});
        sheets::write(inks, language::tr("frame"), {box.min.x + 22, box.min.y + 11}, {Face::regular, 9.5},
                      theme.ink3);
        sheets::write(inks, language::tr("Drawer, from above"), {box.min.x + 22, box.max.y - 7},
                      {Face::bold, 12}, theme.ink);
    };
    return cell;
}

QString unit_name(job::DisplayUnits units) {
    return units == job::DisplayUnits::mm ? QStringLiteral("mm") : QStringLiteral("in");
}

} // namespace

QString Summary::said(double mm) const { return language::say_length_bare(mm, job.display_units); }

Box page_room(print::Paper paper) {
    Box room = border_of(print::size_mm(paper, print::Orientation::portrait));
    room.max.y -= px(block_mm);
    return room;
}

Page empty_page(print::Paper paper) { return {print::size_mm(paper, print::Orientation::portrait), {}}; }

void write_page_frame(Page& page, const Summary& summary, const Foot& foot, int number, int total) {
    const theme::Theme& theme = summary.theme;
    sheets::Inks& inks = page.inks;
    const Box border = border_of(page.size_mm);
    const Box block{{border.min.x, border.max.y - px(block_mm)}, border.max};
    const double split = block.min.x + block.width() * 0.265, middle = block.center().y;
    sheets::write(inks, language::tr("Job summary"), {block.min.x + 8, block.min.y + 33},
                  {Face::drafting, 22}, theme.ink);
    const theme::Lettering small{Face::regular, 9.5};
    sheets::write(inks, summary.printing.program, {block.min.x + 8, block.max.y - 21}, small, theme.ink2);
    sheets::write(inks, language::tr("figures are estimates: see last page"),
                  {block.min.x + 8, block.max.y - 8}, small, theme.ink2);
    print::rule(inks, {split, block.min.y}, {split, block.max.y}, LineRole::thin, theme);
    print::rule(inks, {split, middle}, {block.max.x, middle}, LineRole::thin, theme);

    const QString title =
        summary.job.title.empty() ? language::tr("Untitled job") : QString::fromStdString(summary.job.title);
    print::write_cells(inks, {{split, block.min.y}, {block.max.x, middle}},
                       {{language::tr("job"), {title}, 2.1, false, {}},
                        {language::tr("revision"),
                         {QStringLiteral("%1 · %2")
                              .arg(summary.job.revision)
                              .arg(QString::fromStdString(job::fingerprint(summary.job)))},
                         0.9,
                         false,
                         {}},
                        {language::tr("printed"), {summary.printing.at}, 1.2, false, {}}},
                       theme);
    std::vector<print::TitleCell> second;
    if (foot.has_frame) {
        second.push_back(frame_cell());
        second.push_back({language::tr("scale"), {foot.scale}, 0.6, false, {}});
    }
    second.push_back({language::tr("unit"), {unit_name(summary.job.display_units)}, 0.4, false, {}});
    second.push_back({language::tr("drawer"), {foot.drawer}, 1.3, false, {}});
    second.push_back(
        {language::tr("page"), {language::tr("%1 of %2").arg(number).arg(total)}, 0.6, false, {}});
    print::write_cells(inks, {{split, middle}, block.max}, second, theme);
    print::rule(inks, block.min, {block.max.x, block.min.y}, LineRole::title_line, theme);
    print::frame(inks, border, LineRole::border, theme);
    write_centering_marks(inks, border, px(page.size_mm), theme);
}

} // namespace drawercast::summary
