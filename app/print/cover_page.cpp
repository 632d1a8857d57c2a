// SPDX-License-Identifier: GPL-3.0-or-later
#include "language/spoken.h"
#include "print/template_sheet.h"
#include "print/tile_map.h"
#include "print/title_block.h"
#include "sheets/signs.h"

#include <algorithm>

namespace drawercast::print {

using sheets::Align;
using theme::Face;
using theme::LineRole;

namespace {

constexpr double foot_mm = 23; ///< height of the title block
constexpr double pad = 10;

/// Inside of the page's border: 20 mm on the left for filing, 10 elsewhere.
Box border_of(Vec size_mm) {
    return px(Box{{2 * safe_margin_mm, safe_margin_mm}, size_mm - Vec{safe_margin_mm, safe_margin_mm}});
}

void write_foot(sheets::Inks& inks, const Box& border, const Template& drawing, const LaidOut& laid,
                int number, int total, const Printing& printing, const theme::Theme& theme) {
    const Box foot{{border.min.x, border.max.y - px(foot_mm)}, border.max};
    const double middle = foot.min.y + foot.height() / 2;
    const double split = foot.min.x + foot.width() * 0.27;
    sheets::write(inks, drawing.words.sheet, {foot.min.x + 8, middle - 8}, {Face::drafting, 22}, theme.ink);
    const theme::Lettering small{Face::regular, 9.5};
    sheets::write(inks, language::tr("1:1 template"), {foot.min.x + 8, middle + 13}, small, theme.ink2);
    sheets::write(inks, printing.program, {foot.min.x + 8, middle + 27}, small, theme.ink2);
    rule(inks, {split, foot.min.y}, {split, foot.max.y}, LineRole::thin, theme);
    rule(inks, {split, middle}, {foot.max.x, middle}, LineRole::thin, theme);
    const TitleCell sign{
        language::tr("frame"),
        {drawing.mirrored ? language::tr("Mold, MIRRORED") : language::tr("Drawer, from above")},
        1.5,
        false,
        {}};
    write_cells(
        inks, {{split, foot.min.y}, {foot.max.x, middle}},
        {sign,
         {language::tr("scale"), {language::tr("1 : 1, true size")}, 1.1, false, {}},
         {language::tr("tiles"), {QString::fromStdString(laid.tiling.extent())}, 0.6, false, {}},
         {language::tr("printed"),
          {printing.at, printing.corrected.isEmpty() ? language::tr("no printer correction")
                                                     : language::tr("corrected for ") + printing.corrected},
          1.2,
          false,
          {}}},
        theme);
    write_cells(inks, {{split, middle}, foot.max},
                {{language::tr("job"), {drawing.words.job, drawing.words.revision}, 1.8, false, {}},
                 {language::tr("drawer"), {drawing.words.drawer}, 1.6, false, {}},
                 {language::tr("page"), {language::tr("%1 of %2").arg(number).arg(total)}, 1.0, false, {}}},
                theme);
    rule(inks, foot.min, {foot.max.x, foot.min.y}, LineRole::title_line, theme);
    frame(inks, border, LineRole::border, theme);
}

std::vector<QString> steps_of(const Template& drawing, const LaidOut& laid, const Printing& printing) {
    const bool one = laid.tiling.printed() == 1;
    std::vector<QString> steps{
        language::tr("Print every page at 100 %, not scaled to the page."),
        language::tr("Hold a ruler to both scales of every page: 100 mm and 4 in, across and along.")};
    if (!printing.correction.isEmpty()) steps.push_back(printing.correction);
    if (!one)
        steps.push_back(language::tr("Cut one of two neighbors along the dash-dotted joint, lay it on the "
                                     "other so that the rings meet, and tape."));
    steps.insert(steps.end(), drawing.words.steps.begin(), drawing.words.steps.end());
    return steps;
}

double write_steps(sheets::Inks& inks, const Box& box, const std::vector<QString>& steps,
                   const theme::Theme& theme) {
    const theme::Lettering face{Face::regular, 11.5}, number{Face::bold, 11.5};
    constexpr double pitch = 15, indent = 18;
    double y = box.min.y + 10;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        sheets::write(inks, QString::number(i + 1), {box.min.x, y}, number, theme.ink);
        for (const QString& line : sheets::broken(steps[i], face, box.width() - indent)) {
            sheets::write(inks, line, {box.min.x + indent, y}, face, theme.ink);
            y += pitch;
        }
        y += 4;
    }
    return y - box.min.y;
}

QString map_caption(const Template& drawing, const LaidOut& laid) {
    const int all = static_cast<int>(laid.tiling.tiles.size()), printed = laid.tiling.printed();
    QString text = language::tr("%1 tiles, %2, rows from the front")
                       .arg(printed)
                       .arg(QString::fromStdString(laid.tiling.extent()));
    if (printed == 1) text = language::tr("1 tile");
    if (printed < all) text += language::tr("; %1 empty, not printed").arg(all - printed);
    return drawing.words.remark.isEmpty() ? text : text + QStringLiteral(". ") + drawing.words.remark;
}

double write_caption(sheets::Inks& inks, const Box& map, double y, const Template& drawing,
                     const LaidOut& laid, const theme::Theme& theme) {
    const theme::Lettering face{Face::regular, 10};
    for (const QString& line : sheets::broken(map_caption(drawing, laid), face, map.width())) {
        y += 13;
        sheets::write(inks, line, {map.min.x, y}, face, theme.ink2);
    }
    return y;
}

/// Map on the left, steps on the right: leaves room for a table. Returns where both have ended.
double write_beside(sheets::Inks& inks, const Box& border, double top, const Template& drawing,
                    const LaidOut& laid, const Printing& printing, const theme::Theme& theme) {
    const double split = border.min.x + border.width() * 0.56;
    const Box map{{border.min.x + pad, top}, {split - pad, top + px(88)}};
    const double under = top + write_tile_map(inks, map, drawing, laid, theme);
    const double caption_end = write_caption(inks, map, under, drawing, laid, theme);
    const Box steps{{split + pad, top}, {border.max.x - pad, top}};
    return std::max(caption_end, top + write_steps(inks, steps, steps_of(drawing, laid, printing), theme));
}

/// Steps over the whole width and a large map below them.
double write_below(sheets::Inks& inks, const Box& border, double top, double floor, const Template& drawing,
                   const LaidOut& laid, const Printing& printing, const theme::Theme& theme) {
    const Box steps{{border.min.x + pad, top}, {border.max.x - pad, top}};
    const double y = top + write_steps(inks, steps, steps_of(drawing, laid, printing), theme) + pad;
    constexpr double below_map = 90; // for its arrow and caption
    const Box map{{border.min.x + pad, y}, {border.max.x - pad, floor - below_map}};
    return write_caption(inks, map, y + write_tile_map(inks, map, drawing, laid, theme), drawing, laid,
                         theme);
}

} // namespace

std::vector<Page> cover_pages(const Template& drawing, const LaidOut& laid, Paper paper, int number,
                              int total, const Printing& printing, const theme::Theme& theme) {
    const Vec size = size_mm(paper, Orientation::portrait);
    const Box border = border_of(size);
    const double floor = border.max.y - px(foot_mm);
    std::vector<Page> pages(1,
                            {size, {}, drawing.words.sheet + language::tr(", cover"), drawing.words.drawer});
    sheets::Inks& inks = pages.front().inks;

    const Box banner{border.min, {border.max.x, border.min.y + px(17)}};
    write_frame(inks, banner, drawing.mirrored, 8, theme);
    const theme::Lettering lay_face{Face::bold, 12};
    for (std::size_t i = 0; i < drawing.words.lay_on.size(); ++i)
        sheets::write(inks, drawing.words.lay_on[i],
                      {banner.max.x - pad, banner.center().y - 4 + 17.0 * static_cast<double>(i)}, lay_face,
                      drawing.mirrored ? theme.paper : theme.ink, Align::right);
    rule(inks, {border.min.x, banner.max.y}, {border.max.x, banner.max.y}, LineRole::thin, theme);

    const double top = banner.max.y + pad;
    double y = drawing.words.table ? write_beside(inks, border, top, drawing, laid, printing, theme)
                                   : write_below(inks, border, top, floor, drawing, laid, printing, theme);
    y += pad;
    write_foot(inks, border, drawing, laid, number, total, printing, theme);
    if (!drawing.words.table) return pages;

    const sheets::Table& table = *drawing.words.table;
    const double left = border.min.x + pad, width = border.width() - 2 * pad;
    const auto head = [&](sheets::Inks& into, double at) {
        sheets::write(into, drawing.words.table_head, {left, at + 14}, {Face::bold, 15}, theme.ink);
        return at + 22;
    };
    std::size_t first = 0;
    double from = head(inks, y);
    rule(inks, {border.min.x, y - 4}, {border.max.x, y - 4}, LineRole::thin, theme);
    while (true) {
        const std::size_t count = table.rows_fitting(first, floor - 6 - from);
        table.write(pages.back().inks, {left, from}, width, first, count, theme);
        first += count;
        if (first >= table.rows.size()) return pages;
        pages.push_back({size,
                         {},
                         drawing.words.sheet + QStringLiteral(", ") + drawing.words.table_name,
                         drawing.words.drawer});
        write_foot(pages.back().inks, border, drawing, laid, number + static_cast<int>(pages.size()) - 1,
                   total, printing, theme);
        from = head(pages.back().inks, border.min.y + 6);
    }
}

} // namespace drawercast::print
