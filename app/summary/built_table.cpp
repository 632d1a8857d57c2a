// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/as_built.h"

#include "language/say.h"
#include "language/spoken.h"
#include "summary/cut_tables.h"

#include <optional>

namespace drawercast::summary {

using sheets::Align;
using sheets::Table;

namespace {

QString said(double value, int places) { return language::fixed(value, places); }

std::vector<Table::Cell> row(const QString& drawer, const QString& mold, const casting::Cavity& cavity,
                             const std::optional<casting::Dose>& dose,
                             const std::optional<casting::Pressure>& pressure) {
    const QString none = QStringLiteral("–");
    return {{drawer, true, {}},
            {mold, false, {}},
            {said(cavity.net_mm3 / 1000, 0), false, {}},
            {dose ? said(dose->poured_ml, 0) : none, true, {}},
            {pressure ? said(pressure->closed_kpa, 1) : none, false, {}}};
}

void add_built(Table& table, const QString& mold, const std::optional<plan::BuiltFigures>& built) {
    if (!built) return;
    table.rows.push_back(row({}, mold, built->cavity, built->dose, built->pressure));
    if (built->planned_dose_kpa) table.rows.back().push_back({said(*built->planned_dose_kpa, 1), false, {}});
}

} // namespace

QString drawer_words(const Summary& summary, const std::string& id) {
    const QString said_id = QString::fromStdString(id);
    for (const auto& drawer : summary.job.drawers)
        if (drawer->id == id && !drawer->name.empty())
            return said_id + QStringLiteral(", ") + QString::fromStdString(drawer->name);
    return said_id;
}

Table built_table(const Summary& summary, const plan::Plan& plan) {
    Table table;
    table.columns = {{language::tr("drawer"), Align::left, 1, 0},
                     {language::tr("mold"), Align::left, 0, 90},
                     {language::tr("holds, mL"), Align::right, 0, 74},
                     {language::tr("pour, mL"), Align::right, 0, 70},
                     {language::tr("closed, kPa"), Align::right, 0, 78},
                     {language::tr("with the plan’s dose, kPa"), Align::right, 0, 140}};
    for (const auto& made : plan.stock->drawers)
        for (const auto& drawer : plan.drawers) {
            if (drawer.id != made.drawer || !drawer.cavity) continue;
            table.rows.push_back(row(drawer_words(summary, drawer.id), language::tr("as planned"),
                                     *drawer.cavity, drawer.dose, drawer.pressure));
            add_built(table, language::tr("as cut"),
                      plan::built_figures(summary.job, drawer, plan::as_cut(summary.job, drawer, made)));
            if (const auto* measured = plan::last_built(summary.job, drawer.id))
                add_built(table, language::tr("as built"),
                          plan::built_figures(summary.job, drawer, *measured));
        }
    return table;
}

} // namespace drawercast::summary
