// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/cost.h"
#include "plan/say.h"

#include "summary/cut_tables.h"

namespace drawercast::summary {

using sheets::Align;
using sheets::Table;

Table cost_table(const Summary& summary, const plan::Plan& plan) {
    Table table;
    const auto basis = plan::cost_basis(summary.job, plan);
    if (!basis) return table;
    const QString currency = QString::fromStdString(summary.job.currency);
    table.columns = {{"sets in a run", Align::left, 0, 76}, {"foam", Align::right, 1, 0},
                     {"boards, bars", Align::right, 1, 0},  {"closures", Align::right, 1, 0},
                     {"hours", Align::right, 1, 0},         {"work", Align::right, 1, 0},
                     {"margin", Align::right, 1, 0},        {"together", Align::right, 1, 0},
                     {"each set", Align::right, 1, 0}};
    const auto money = [](bool known, double amount) {
        return known ? QString::fromStdString(plan::fixed(amount, amount < 100 ? 2 : 0))
                     : QStringLiteral("no price");
    };
    const bool work = basis->hour_price > 0;
    for (const int sets : {1, 2, 5, 10, 20}) {
        const plan::Cost cost = plan::cost_of(*basis, sets);
        table.rows.push_back({{QString::number(sets), true, {}},
                              {money(basis->foam_priced, cost.foam), false, {}},
                              {money(basis->wood_priced, cost.wood), false, {}},
                              {money(true, cost.closures), false, {}},
                              {QString::fromStdString(plan::fixed(cost.hours, 1)), false, {}},
                              {money(work, cost.work), false, {}},
                              {money(true, cost.margin), false, {}},
                              {money(true, cost.total), false, {}},
                              {money(true, cost.each()), true, {}}});
    }
    if (!currency.isEmpty()) table.columns.back().head += QStringLiteral(", ") + currency;
    return table;
}

} // namespace drawercast::summary
