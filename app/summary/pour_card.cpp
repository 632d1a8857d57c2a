// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/pour_card.h"

#include "plan/run_sheet.h"
#include "plan/say.h"

#include "sheets/text.h"
#include "summary/column.h"
#include "summary/tick.h"

#include <cmath>

namespace drawercast::summary {

using sheets::Align;
using sheets::Table;

namespace {

using sheets::text;

constexpr theme::Lettering words{theme::Face::regular, 14};
constexpr double pitch = 20;

Table large(Table table) {
    table.text_px = 18;
    table.head_px = 11;
    table.row_px = 30;
    return table;
}

Table weighing_table(const Summary& summary, const casting::Dose& dose) {
    Table table;
    table.columns = {{"", Align::left, 0, 26},
                     {"into the bucket of each batch, scale at zero", Align::left, 1, 0},
                     {"by weight", Align::right, 0, 150},
                     {"or by volume", Align::right, 0, 150}};
    const auto units = summary.job.display_units;
    for (const auto& one : plan::batch_weighings(dose))
        table.rows.push_back({tick_cell(summary.theme),
                              {text(one.part), true, {}},
                              {one.g > 0 ? text(plan::say_mass_g(one.g, units)) : QString(), true, {}},
                              {text(plan::say_volume_ml(one.ml, units)), false, {}}});
    return large(table);
}

QString seconds(double s) { return QStringLiteral("%1 s").arg(std::lround(s)); }

Table clock_table(const Summary& summary, const casting::Dose& dose, const casting::Times& times) {
    Table table;
    table.columns = {{"", Align::left, 0, 26},
                     {"stopwatch, from A meeting B", Align::left, 0, 190},
                     {"", Align::left, 1, 0}};
    const auto row = [&](const QString& when, const char* what, bool bold = false) {
        table.rows.push_back(
            {tick_cell(summary.theme), {when, true, {}}, {QString::fromUtf8(what), bold, {}}});
    };
    const double mix_s = summary.job.foam->mix_s;
    row(seconds(0), "mix, scraping sides and bottom while mixing");
    row(seconds(mix_s), "coat slots and blocks, pour; do not scrape out");
    row(seconds(mix_s + dose.pour_s), "poured; plate on, drive the closures");
    row(seconds(times.touch_s), "foam reaches the plate: past this do not close", true);
    row(seconds(times.contact_s), "the mold is full and pushes: stay off it");
    row(seconds(times.rise_s), "risen; wash tools now, in open air");
    row(QStringLiteral("%1 min").arg(std::lround(times.demold_min)), "open at the earliest");
    return large(table);
}

/// Common practice, no source.
const char* const rescues[] = {
    "Late: leave the plate off, let it rise open, and cut it flat once cured.",
    "Short of the plate: leave it. A second pour on cured foam does not bind well; cast again by a test cup.",
    "Leaking joint: press clay on it with a gloved hand, from the side; stay off the mold.",
    "A corner lifts: drive the closures beside it from the side; nobody leans over the mold.",
    "Stuck: give it another hour, take the blocks' screws out from below, peel from the edges; never pry.",
};

} // namespace

std::vector<Composed> pour_card(const Summary& summary, const plan::DrawerPlan& drawer, const QString& name) {
    if (!drawer.dose || !drawer.times) return {};
    const casting::Dose& dose = *drawer.dose;
    Column column(summary, {name, {}, false});
    column.head(QStringLiteral("Pour card: ") + name, 200);
    column.lines(dose.batches == 1
                     ? QStringLiteral("One batch.")
                     : QStringLiteral("%1 batches, each like this, poured one right after the other.")
                           .arg(dose.batches),
                 words, pitch, 0);
    column.down(8);
    column.table(weighing_table(summary, dose));
    column.table(clock_table(summary, dose, *drawer.times));
    column.head(QStringLiteral("When it goes wrong"), 140);
    for (const char* line : rescues) {
        column.lines(QString::fromUtf8(line), words, pitch, 0);
        column.down(4);
    }
    column.down(6);
    column.lines(
        QStringLiteral("Seconds are estimates for today's temperature (%1). Gloves, goggles, moving air; "
                       "the material's safety sheet comes first.")
            .arg(text(plan::say_temperature_c(summary.job.shop->temperature_c, summary.job.display_units))),
        {theme::Face::regular, 11.5}, 15, 0);
    return column.take();
}

} // namespace drawercast::summary
