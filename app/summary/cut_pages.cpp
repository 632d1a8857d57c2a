// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/cut_pages.h"

#include "plan/stock_stage.h"

#include "language/goods.h"
#include "language/spoken.h"
#include "sheets/box_and_cuts.h"
#include "sheets/part_words.h"
#include "summary/column.h"
#include "summary/cut_tables.h"
#include "summary/placed.h"

#include <algorithm>

namespace drawercast::summary {

namespace {

constexpr double least_reduction = 4; ///< small ones are not blown up further than this
constexpr double most_high_px = 380;  ///< of a cut sheet: two on a page
constexpr double page_high_px = 700;  ///< of one with many cuts: their numbers need the room
constexpr std::size_t many_cuts = 40;

constexpr double above_px = 80;  ///< heading and words above the first one
constexpr double beside_px = 36; ///< a sheet's own name, and room below it

double most_high(const Summary& summary, const stock::SheetLayout& sheet) {
    if (sheet.cuts.size() > many_cuts) return page_high_px;
    return std::min(most_high_px, (page_room(summary.paper).height() - above_px) / 2 - beside_px);
}

/// One cut sheet, as large as the column allows.
void add_sheet(Column& column, const Summary& summary, const sheets::Sheet<sheets::OnBench>& sheet,
               double most_px) {
    const double width = column.width() - sheet.lower_room_px.x - sheet.upper_room_px.x;
    const double reduction = std::max(
        {print::px(sheet.area.width()) / width, print::px(sheet.area.height()) / most_px, least_reduction});
    const double per_mm = theme::px_per_mm / reduction, whole = whole_px(sheet, per_mm).y;
    if (column.free() < whole) column.turn_page();
    put_sheet(column.inks(), sheet, per_mm, column.here(), summary.theme);
    column.down(whole + 6);
}

void add_bar_lines(Column& column, const Summary& summary, const plan::StockPlan& stock) {
    if (stock.cuts.bars.empty()) return;
    column.head(language::tr("Lengths"), 40);
    for (const auto& cut : stock.cuts.bars) {
        int number = 0;
        for (const auto& bar : cut.bars) {
            QStringList pieces;
            for (const int index : bar) {
                const auto& part = stock.lengths[static_cast<std::size_t>(index)];
                pieces.append(sheets::part_words(part.label) + QStringLiteral(" ") +
                              summary.said(part.length_mm));
            }
            column.lines(language::tr("%1, piece %2 of %3:  %4")
                             .arg(language::goods_name(cut.stock))
                             .arg(++number)
                             .arg(cut.bars.size())
                             .arg(pieces.join(QStringLiteral(",  "))),
                         {theme::Face::regular, 11.5}, 15, 0);
        }
    }
    column.down(8);
}

void add_sheets(Column& column, const Summary& summary, const plan::StockPlan& stock) {
    double first = 0;
    if (const auto& boards = stock.cuts.boards; !boards.empty() && !boards.front().sheets.empty())
        first = most_high(summary, boards.front().sheets.front());
    column.head(language::tr("Cut sheets"), above_px + first);
    column.lines(
        language::tr(
            "Numbers are the order of cuts, each from edge to edge of the piece; where a number has no room "
            "on its cut, a line leads to it. Kerf %1 and %2 off every edge are taken care of.")
            .arg(summary.said(summary.job.shop->kerf_mm), summary.said(5)),
        {theme::Face::regular, 11.5}, 15, 0);
    column.down(8);
    for (std::size_t board = 0; board < stock.cuts.boards.size(); ++board)
        for (std::size_t index = 0; index < stock.cuts.boards[board].sheets.size(); ++index)
            add_sheet(column, summary, sheets::cut_sheet(summary.job, stock, board, index, 0),
                      most_high(summary, stock.cuts.boards[board].sheets[index]));
}

/// Parts that no sheet or bar at hand gives.
void add_too_large(Column& column, const plan::StockPlan& stock) {
    QStringList words;
    for (const auto& cut : stock.cuts.boards)
        for (const int part : cut.too_large)
            words.append(sheets::part_words(stock.parts[static_cast<std::size_t>(part)].label));
    for (const auto& cut : stock.cuts.bars)
        for (const int part : cut.too_long)
            words.append(sheets::part_words(stock.lengths[static_cast<std::size_t>(part)].label));
    if (words.isEmpty()) return;
    column.lines(language::tr("Larger than any sheet or length of its kind: ") +
                     words.join(QStringLiteral(", ")),
                 {theme::Face::bold, 11.5}, 15, 0);
    column.down(6);
}

} // namespace

std::vector<Composed> cut_pages(const Summary& summary, const plan::Plan& plan) {
    if (!plan.stock || plan.stock->drawers.empty()) return {};
    const plan::StockPlan& stock = *plan.stock;
    Column column(summary, {language::tr("all drawers"), {}, false});
    column.head(language::tr("To buy"), 60);
    add_too_large(column, stock);
    column.table(buy_table(summary, stock));
    if (const auto costs = cost_table(summary, plan); !costs.rows.empty()) {
        column.head(language::tr("Cost of a set: one insert of each drawer"), 120);
        column.lines(language::tr("Whole kits, sheets and lumber, those on the shelf too; one mold for the "
                                  "whole run; hours are the run sheet’s, our guess. Sealer, release and the "
                                  "like count where the shop says how they are sold."),
                     {theme::Face::regular, 11.5}, 15, 0);
        column.down(4);
        column.table(costs);
    }
    column.head(language::tr("Used up"), 60);
    column.table(supply_table(summary, stock));
    column.head(language::tr("Boxes"), 60);
    column.table(box_table(summary, stock));
    for (const auto& drawer : stock.drawers) {
        column.head(language::tr("Blocks of ") + drawer_words(summary, drawer.drawer), 60);
        column.table(block_stock_table(summary, drawer));
    }
    column.head(language::tr("Places always missed with sealer and release"), 40);
    column.table(missed_table(summary, stock));
    column.head(language::tr("Saw, fence by fence"), 60);
    column.table(ticket_table(summary, stock));
    column.lines(
        language::tr("Free side: too narrow to push between fence and blade. Set the fence for the rest of a "
                     "wider piece, so that the narrow one falls off the free side of the blade."),
        {theme::Face::regular, 11.5}, 15, 0);
    add_bar_lines(column, summary, stock);
    column.head(language::tr("Foam for the mold as cut, and as built"), 60);
    column.lines(
        language::tr("Measure the mold before the pour: what its box, walls and odd blocks change is "
                     "worked out again. Pour what stands under “pour”."),
        {theme::Face::regular, 11.5}, 15, 0);
    column.down(4);
    column.table(built_table(summary, plan));
    if (!summary.job.casts.empty()) {
        column.head(language::tr("Casts and their molds, masses in g"), 60);
        column.table(cast_table(summary, plan));
    }
    add_sheets(column, summary, stock); // last: large pictures would tear what follows them apart
    return column.take();
}

} // namespace drawercast::summary
