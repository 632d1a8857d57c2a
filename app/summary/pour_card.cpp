// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/pour_card.h"

#include "plan/pour_log.h"
#include "plan/pour_steps.h"
#include "plan/run_ticks.h"

#include "language/in_words.h"
#include "language/say.h"
#include "language/spoken.h"
#include "sheets/text.h"
#include "summary/column.h"
#include "summary/tick.h"

#include <cmath>

namespace drawercast::summary {

using sheets::Align;
using sheets::Table;

namespace {

constexpr theme::Lettering words{theme::Face::regular, 16};
constexpr double pitch = 23;

Table large(Table table) {
    table.text_px = 20;
    table.head_px = 13;
    table.row_px = 33;
    return table;
}

/// What must be true before, ticked where the job has it ticked.
Table gate_table(const Summary& summary, const runsheet::Task& pour) {
    Table table;
    table.columns = {{"", Align::left, 0, 20}, {language::tr("before the pour"), Align::left, 1, 0}};
    table.text_px = 13;
    table.head_px = 13;
    table.row_px = 20;
    for (std::size_t gate = 0; gate < pour.gates.size(); ++gate)
        table.rows.push_back(
            {tick_cell(summary.theme, plan::is_ticked(summary.job.log, plan::gate_tick(pour, gate))),
             {in_words(pour.gates[gate]), false, {}}});
    return table;
}

QString weighed(const plan::ScaleReading& one) {
    const QString what = in_words(plan::words_of(one.part));
    if (one.part == plan::Component::a) return language::tr("%1 in a cup of its own").arg(what);
    return one.zero_first ? language::tr("%1 into the bucket").arg(what) : what;
}

/// One batch: what the scale shows, in its own steps. Part A waits in its cup: the clock starts when they
/// meet.
Table weighing_table(const Summary& summary, const casting::Dose& dose) {
    Table table;
    table.columns = {{"", Align::left, 0, 26},
                     {language::tr("for each batch, scale to zero before each"), Align::left, 1, 0},
                     {language::tr("the scale shows"), Align::right, 0, 150},
                     {language::tr("or by volume"), Align::right, 0, 150}};
    const auto units = summary.job.display_units;
    for (const auto& one : plan::scale_readings(dose, summary.job.shop->scale_step_g))
        table.rows.push_back(
            {tick_cell(summary.theme),
             {weighed(one), true, {}},
             {one.shown_g > 0 ? language::say_mass_g(one.shown_g, units) : QString(), true, {}},
             {language::say_volume_ml(one.ml, units), false, {}}});
    return large(table);
}

QString seconds(double s) {
    constexpr double as_minutes_from = 600, s_per_min = 60;
    return s < as_minutes_from ? QStringLiteral("%1 s").arg(std::lround(s))
                               : language::tr("%1 min").arg(std::lround(s / s_per_min));
}

/// The steps of the pour day's view from the moment the clock starts, with their details below them.
Table clock_table(const Summary& summary, const std::vector<plan::PourStep>& steps) {
    Table table;
    table.columns = {{"", Align::left, 0, 26},
                     {language::tr("done by, from start of mixing"), Align::left, 0, 200},
                     {"", Align::left, 1, 0}};
    bool clock = false;
    for (const auto& step : steps) {
        clock = clock || step.id == plan::clock_step;
        if (!clock) continue;
        const QString due = step.id == plan::clock_step ? seconds(0)
                            : step.due_s                ? seconds(*step.due_s)
                                                        : QString();
        table.rows.push_back({tick_cell(summary.theme), {due, true, {}}, {in_words(step.what), false, {}}});
        for (std::size_t i = 0; i < step.on_card; ++i)
            table.rows.push_back({{}, {}, {in_words(step.details[i]), false, {}}});
        if (step.limit_s) // not in the column of times: what comes next may be due before it
            table.rows.push_back({{},
                                  {},
                                  {language::tr("not on by %1: leave it off, let the foam rise open")
                                       .arg(seconds(std::floor(*step.limit_s))),
                                   true,
                                   {}}});
    }
    return large(table);
}

QString who_does_what(const job::Shop& shop) {
    if (shop.people == 1 && shop.drivers == 1)
        return language::tr(
            "One person: pre-start the closures before the clock, and have the plate within reach.");
    return language::tr(
               "People who mix and pour, then set the plate on and peg the vents: %1. People who close, "
               "from opposite sides: %2. Pre-start the closures before the clock.")
        .arg(shop.people)
        .arg(shop.drivers);
}

} // namespace

std::vector<Composed> pour_card(const Summary& summary, const plan::DrawerPlan& drawer,
                                const runsheet::Task& pour, const QString& name) {
    const auto dose = plan::dose_to_pour(summary.job, drawer);
    const auto steps = plan::pour_steps(summary.job, drawer);
    if (!dose || steps.empty()) return {};
    Column column(summary, {name, {}, false});
    column.head(language::tr("Pour card: ") + name, 200);
    column.lines(
        dose->batches == 1
            ? language::tr("One batch.")
            : language::tr("%1 batches, each like this, mixed side by side: a person and a mixer each.")
                  .arg(dose->batches),
        words, pitch, 0);
    column.down(8);
    column.table_in_two(gate_table(summary, pour));
    column.table(weighing_table(summary, *dose));
    column.table(clock_table(summary, steps));
    if (const int count = plan::closure_count(drawer); count > 0)
        column.lines(
            language::tr("Closures: in the order of their numbers on the plate, 1 to %1. Once cured, loosen "
                         "them in reverse, all a quarter turn first, from the side.")
                .arg(count),
            words, pitch, 0);
    column.down(4);
    column.lines(who_does_what(*summary.job.shop), words, pitch, 0);
    column.down(6);
    column.lines(
        language::tr("Seconds are estimates for today's temperature (%1). Everybody in gloves, "
                     "goggles and the breathing protection of the safety data sheet, moving air; "
                     "that sheet comes first. When it goes wrong: the rescue card.")
            .arg(language::say_temperature_c(summary.job.shop->temperature_c, summary.job.display_units)),
        {theme::Face::regular, 11.5}, 15, 0);
    return column.take();
}

} // namespace drawercast::summary
