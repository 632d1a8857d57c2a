// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/cost.h"

#include "language/say.h"
#include "language/spoken.h"
#include "summary/cut_tables.h"

namespace drawercast::summary {

using sheets::Align;
using sheets::Table;

Table cost_table(const Summary& summary, const plan::Plan& plan) {
    Table table;
    const auto basis = plan::cost_basis(summary.job, plan);
    if (!basis) return table;
    const QString currency = QString::fromStdString(summary.job.currency);
    table.columns = {{language::tr("sets in a run"), Align::left, 0, 76},
                     {language::tr("foam"), Align::right, 1, 0},
                     {language::tr("wood"), Align::right, 1, 0},
                     {language::tr("closures"), Align::right, 1, 0},
                     {language::tr("used up"), Align::right, 1, 0},
                     {language::tr("hours"), Align::right, 1, 0},
                     {language::tr("work"), Align::right, 1, 0},
                     {language::tr("markup"), Align::right, 1, 0},
                     {language::tr("together"), Align::right, 1, 0},
                     {language::tr("each set"), Align::right, 1.6, 0}};
    const auto money = [](bool known, double amount) {
        return known ? language::fixed(amount, amount < 100 ? 2 : 0) : language::tr("no price");
    };
    const bool work = basis->hour_price > 0;
    for (const int sets : {1, 2, 5, 10, 20}) {
        const plan::Cost cost = plan::cost_of(*basis, sets);
        table.rows.push_back({{QString::number(sets), true, {}},
                              {money(basis->foam_priced, cost.foam), false, {}},
                              {money(basis->wood_priced, cost.wood), false, {}},
                              {money(true, cost.closures), false, {}},
                              {money(!basis->supplies.empty(), cost.supplies), false, {}},
                              {language::fixed(cost.hours, 1), false, {}},
                              {money(work, cost.work), false, {}},
                              {money(true, cost.margin), false, {}},
                              {money(true, cost.total), false, {}},
                              {money(true, cost.each()), true, {}}});
    }
    if (!currency.isEmpty()) table.columns.back().head += QStringLiteral(", ") + currency;
    return table;
}

} // namespace drawercast::summary
