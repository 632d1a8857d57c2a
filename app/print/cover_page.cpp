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

void write_foot(sheets::Inks& inks, const Box& border, const PageOf& of) {
    const Box foot{{border.min.x, border.max.y - px(foot_mm)}, border.max};
    const double middle = foot.min.y + foot.height() / 2;
    const double split = foot.min.x + foot.width() * 0.27;
    sheets::write(inks, of.drawing.words.sheet, {foot.min.x + 8, middle - 8}, {Face::drafting, 22},
                  of.theme.ink);
    const theme::Lettering small{Face::regular, 9.5};
    sheets::write(inks, language::tr("1:1 template"), {foot.min.x + 8, middle + 13}, small, of.theme.ink2);
    sheets::write(inks, of.printing.program, {foot.min.x + 8, middle + 27}, small, of.theme.ink2);
    rule(inks, {split, foot.min.y}, {split, foot.max.y}, LineRole::thin, of.theme);
    rule(inks, {split, middle}, {foot.max.x, middle}, LineRole::thin, of.theme);
    const TitleCell sign{
        language::tr("frame"),
        {of.drawing.mirrored ? language::tr("Mold, MIRRORED") : language::tr("Drawer, from above")},
        1.5,
        false,
        {}};
    write_cells(inks, {{split, foot.min.y}, {foot.max.x, middle}},
                {sign,
                 {language::tr("scale"), {language::tr("1 : 1, true size")}, 1.1, false, {}},
                 {language::tr("tiles"), {QString::fromStdString(of.laid.tiling.extent())}, 0.6, false, {}},
                 {language::tr("printed"),
                  {of.printing.at, of.printing.corrected.isEmpty()
                                       ? language::tr("no printer correction")
                                       : language::tr("corrected for ") + of.printing.corrected},
                  1.2,
                  false,
                  {}}},
                of.theme);
    write_cells(
        inks, {{split, middle}, foot.max},
        {{language::tr("job"), {of.drawing.words.job, of.drawing.words.revision}, 1.8, false, {}},
         {language::tr("drawer"), {of.drawing.words.drawer}, 1.6, false, {}},
         {language::tr("page"), {language::tr("%1 of %2").arg(of.number).arg(of.total)}, 1.0, false, {}}},
        of.theme);
    rule(inks, foot.min, {foot.max.x, foot.min.y}, LineRole::title_line, of.theme);
    frame(inks, border, LineRole::border, of.theme);
}

std::vector<QString> steps_of(const PageOf& of) {
    const bool one = of.laid.tiling.printed() == 1;
    std::vector<QString> steps{
        language::tr("Print every page at 100 %, not scaled to the page."),
        language::tr("Hold a ruler to both scale bars of every page: 100 mm and 4 in, across and along.")};
    if (!of.printing.correction.isEmpty()) steps.push_back(of.printing.correction);
    if (!one)
        steps.push_back(language::tr("Cut one of two neighbors along the dash-dotted joint, lay it on the "
                                     "other so that the rings meet, and tape."));
    steps.insert(steps.end(), of.drawing.words.steps.begin(), of.drawing.words.steps.end());
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

QString map_caption(const PageOf& of) {
    const int all = static_cast<int>(of.laid.tiling.tiles.size()), printed = of.laid.tiling.printed();
    QString text = language::tr("%1 tiles, %2, rows from the front")
                       .arg(printed)
                       .arg(QString::fromStdString(of.laid.tiling.extent()));
    if (printed == 1) text = language::tr("1 tile");
    if (printed < all) text += language::tr("; %1 empty, not printed").arg(all - printed);
    return of.drawing.words.remark.isEmpty() ? text : text + QStringLiteral(". ") + of.drawing.words.remark;
}

double write_caption(sheets::Inks& inks, const Box& map, double y, const PageOf& of) {
    const theme::Lettering face{Face::regular, 10};
    for (const QString& line : sheets::broken(map_caption(of), face, map.width())) {
        y += 13;
        sheets::write(inks, line, {map.min.x, y}, face, of.theme.ink2);
    }
    return y;
}

/// Above map and steps. Returns where they begin.
double write_warning(sheets::Inks& inks, const Box& border, double top, const PageOf& of) {
    if (of.drawing.words.warning.isEmpty()) return top;
    const theme::Lettering face{Face::bold, 15};
    constexpr double pitch = 20;
    double y = top;
    for (const QString& line : sheets::broken(of.drawing.words.warning, face, border.width() - 2 * pad)) {
        sheets::write(inks, line, {border.min.x + pad, y + pitch / 2}, face, of.theme.red);
        y += pitch;
    }
    return y + pad;
}

/// Map on the left, steps on the right: leaves room for a table. Returns where both have ended.
double write_beside(sheets::Inks& inks, const Box& border, double top, const PageOf& of) {
    const double split = border.min.x + border.width() * 0.56;
    const Box map{{border.min.x + pad, top}, {split - pad, top + px(88)}};
    const double under = top + write_tile_map(inks, map, of.drawing, of.laid, of.theme);
    const double caption_end = write_caption(inks, map, under, of);
    const Box steps{{split + pad, top}, {border.max.x - pad, top}};
    return std::max(caption_end, top + write_steps(inks, steps, steps_of(of), of.theme));
}

/// Steps over the whole width and a large map below them.
double write_below(sheets::Inks& inks, const Box& border, double top, double floor, const PageOf& of) {
    const Box steps{{border.min.x + pad, top}, {border.max.x - pad, top}};
    const double y = top + write_steps(inks, steps, steps_of(of), of.theme) + pad;
    constexpr double below_map = 90; // for its arrow and caption
    const Box map{{border.min.x + pad, y}, {border.max.x - pad, floor - below_map}};
    return write_caption(inks, map, y + write_tile_map(inks, map, of.drawing, of.laid, of.theme), of);
}

} // namespace

std::vector<Page> cover_pages(const PageOf& of) {
    const Vec size = size_mm(of.paper, Orientation::portrait);
    const Box border = border_of(size);
    const double floor = border.max.y - px(foot_mm);
    std::vector<Page> pages(
        1, {size, {}, of.drawing.words.sheet + language::tr(", cover"), of.drawing.words.drawer});
    sheets::Inks& inks = pages.front().inks;

    const Box banner{border.min, {border.max.x, border.min.y + px(17)}};
    write_frame(inks, banner, of.drawing.mirrored, 8, of.theme);
    const theme::Lettering lay_face{Face::bold, 12};
    for (std::size_t i = 0; i < of.drawing.words.lay_on.size(); ++i)
        sheets::write(inks, of.drawing.words.lay_on[i],
                      {banner.max.x - pad, banner.center().y - 4 + 17.0 * static_cast<double>(i)}, lay_face,
                      of.drawing.mirrored ? of.theme.paper : of.theme.ink, Align::right);
    rule(inks, {border.min.x, banner.max.y}, {border.max.x, banner.max.y}, LineRole::thin, of.theme);

    const double top = write_warning(inks, border, banner.max.y + pad, of);
    double y = of.drawing.words.table ? write_beside(inks, border, top, of)
                                      : write_below(inks, border, top, floor, of);
    y += pad;
    write_foot(inks, border, of);
    if (!of.drawing.words.table) return pages;

    const sheets::Table& table = *of.drawing.words.table;
    const double left = border.min.x + pad, width = border.width() - 2 * pad;
    const auto head = [&](sheets::Inks& into, double at) {
        sheets::write(into, of.drawing.words.table_head, {left, at + 14}, {Face::bold, 15}, of.theme.ink);
        return at + 22;
    };
    std::size_t first = 0;
    double from = head(inks, y);
    rule(inks, {border.min.x, y - 4}, {border.max.x, y - 4}, LineRole::thin, of.theme);
    while (true) {
        const std::size_t count = table.rows_fitting(first, floor - 6 - from);
        table.write(pages.back().inks, {left, from}, width, first, count, of.theme);
        first += count;
        if (first >= table.rows.size()) return pages;
        pages.push_back({size,
                         {},
                         of.drawing.words.sheet + QStringLiteral(", ") + of.drawing.words.table_name,
                         of.drawing.words.drawer});
        PageOf next = of;
        next.number += static_cast<int>(pages.size()) - 1;
        write_foot(pages.back().inks, border, next);
        from = head(pages.back().inks, border.min.y + 6);
    }
}

} // namespace drawercast::print
