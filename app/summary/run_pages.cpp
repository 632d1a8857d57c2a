// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/run_pages.h"

#include "plan/run_sheet.h"
#include "plan/run_ticks.h"

#include "language/in_words.h"
#include "language/spoken.h"
#include "sheets/run_bars.h"
#include "sheets/run_words.h"
#include "sheets/text.h"
#include "summary/column.h"
#include "summary/placed.h"
#include "summary/pour_card.h"
#include "summary/rescue_card.h"
#include "summary/tick.h"

namespace drawercast::summary {

using sheets::Align;
using sheets::Table;

namespace {

using sheets::text;

QString needed(const runsheet::Task& task) {
    QStringList all;
    for (const auto& one : task.materials) all << in_words(one);
    return all.join(QStringLiteral(", "));
}

/// One quantity stands behind what it is for, several in a row of their own.
QString with_needed(const runsheet::Task& task) {
    const QString what = in_words(task.what);
    return task.materials.empty() ? what : QStringLiteral("%1 (%2)").arg(what, needed(task));
}

/// The drawer's own; nullptr: it is not poured.
const runsheet::Task* pour_of(const plan::RunSheet& run, const std::string& drawer) {
    for (const auto& task : run.tasks)
        if (!task.gates.empty() && task.id.rfind(drawer + "/", 0) == 0) return &task;
    return nullptr;
}

Table day_table(const Summary& summary, const plan::RunSheet& sheet, int day) {
    Table table;
    table.columns = {{"", Align::left, 0, 20},
                     {language::tr("from"), Align::left, 0, 0, true},
                     {language::tr("until"), Align::left, 0, 0, true},
                     {language::tr("drawer"), Align::left, 0, 0, true},
                     {language::tr("what"), Align::left, 1, 0},
                     {language::tr("then"), Align::left, 0, 0, true}};
    for (const auto& slot : sheet.schedule.entries) {
        if (runsheet::day_of(slot.begins_min) != day) continue;
        const auto& task = sheet.tasks[slot.task];
        const bool few = task.materials.size() < 2;
        table.rows.push_back(
            {tick_cell(summary.theme, plan::is_ticked(summary.job.log, plan::task_tick(task))),
             {sheets::run_clock(slot.begins_min), false, {}},
             {sheets::run_until(slot), false, {}},
             {text(task.drawer), false, {}},
             {few ? with_needed(task) : in_words(task.what), slot.critical, {}},
             {sheets::run_then(slot), false, {}}});
        if (!few)
            table.rows.push_back(
                {{}, {}, {}, {}, {language::tr("takes %1").arg(needed(task)), false, {}}, {}});
    }
    return table;
}

void add_bars(Column& column, const Summary& summary, const plan::RunSheet& run) {
    const auto sheet = sheets::run_bars(run, summary.job, column.width() / theme::px_per_mm);
    const double height = whole_px(sheet, theme::px_per_mm).y;
    if (column.free() < height) column.turn_page();
    put_sheet(column.inks(), sheet, theme::px_per_mm, column.here(), summary.theme);
    column.down(height);
    column.lines(
        language::tr(
            "Dark: hands on; open: left alone; black with wide edges: can't wait; a flag: conditions "
            "come first, an open one once all are met. Bands are the hours the shop is closed."),
        {theme::Face::regular, 10}, 15, 0);
    column.down(10);
}

} // namespace

std::vector<Composed> run_pages(const Summary& summary, const plan::Plan& plan) {
    const auto sheet = plan::run_sheet(summary.job, plan);
    if (sheet.tasks.empty()) return {};
    Column column(summary, {language::tr("all drawers"), {}, false});
    constexpr double min_per_h = 60;
    column.head(language::tr("Run sheet, shop open from %1 to %2")
                    .arg(sheets::run_clock(min_per_h * summary.job.shop->opens_h),
                         sheets::run_clock(min_per_h * summary.job.shop->closes_h)),
                80);
    column.lines(
        language::tr("Hours are our guess for %1 at work: times taken with a stopwatch are better. What is "
                     "printed bold can't wait without making the whole job later.")
            .arg(summary.job.shop->people == 1 ? language::tr("one person")
                                               : language::tr("%1 people").arg(summary.job.shop->people)),
        {theme::Face::regular, 11.5}, 15, 0);
    column.down(8);
    add_bars(column, summary, sheet);
    for (int day = 1; day <= sheet.schedule.days; ++day) {
        const Table table = day_table(summary, sheet, day);
        if (table.rows.empty()) continue;
        column.head(language::tr("Day %1").arg(day), 60);
        column.table(table);
    }
    std::vector<Composed> pages = column.take();
    for (Composed& page : card_pages(summary, plan)) pages.push_back(std::move(page));
    return pages;
}

std::vector<Composed> card_pages(const Summary& summary, const plan::Plan& plan) {
    std::vector<Composed> pages;
    const auto run = plan::run_sheet(summary.job, plan);
    for (std::size_t i = 0; i < std::min(plan.drawers.size(), summary.job.drawers.size()); ++i)
        if (const auto* pour = pour_of(run, plan.drawers[i].id))
            for (Composed& page :
                 pour_card(summary, plan.drawers[i], *pour, text(summary.job.drawers[i]->name)))
                pages.push_back(std::move(page));
    if (pages.empty()) return pages;
    for (Composed& page : rescue_card(summary, plan)) pages.push_back(std::move(page));
    return pages;
}

} // namespace drawercast::summary
