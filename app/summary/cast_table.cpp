// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/as_cast.h"

#include "language/say.h"
#include "language/spoken.h"
#include "summary/cut_tables.h"

#include <algorithm>
#include <optional>

namespace drawercast::summary {

using sheets::Align;
using sheets::Table;

namespace {

QString grams(const std::optional<double>& g) { return g ? language::fixed(*g, 0) : QStringLiteral("–"); }

const plan::DrawerPlan* find(const plan::Plan& plan, const std::string& id) {
    const auto at = std::find_if(plan.drawers.begin(), plan.drawers.end(),
                                 [&](const auto& drawer) { return drawer.id == id; });
    return at == plan.drawers.end() ? nullptr : &*at;
}

} // namespace

Table cast_table(const Summary& summary, const plan::Plan& plan) {
    Table table;
    table.columns = {{language::tr("drawer"), Align::left, 0, 0, true},
                     {language::tr("cast"), Align::right, 0, 28},
                     {"", Align::left, 0, 8},
                     {language::tr("day"), Align::left, 0, 62},
                     {language::tr("mixed"), Align::right, 0, 42},
                     {language::tr("insert"), Align::right, 0, 42},
                     {language::tr("trimmed"), Align::right, 0, 46},
                     {language::tr("wasted"), Align::right, 0, 42},
                     {language::tr("release"), Align::right, 0, 46},
                     {language::tr("clay"), Align::right, 0, 34},
                     {language::tr("on these holes"), Align::right, 0, 82},
                     {"", Align::left, 0, 8},
                     {language::tr("note"), Align::left, 1, 0}};
    std::vector<job::Cast> until;
    for (const auto& cast : summary.job.casts) {
        until.push_back(cast);
        const auto log = plan::mold_log(until, cast.drawer);
        const auto* drawer = find(plan, cast.drawer);
        const auto seen =
            plan::cast_figures(summary.job, drawer != nullptr ? *drawer : plan::DrawerPlan{}, cast);
        const auto trimmed = cast.trimmed_g || cast.plugs_g
                                 ? std::optional(cast.trimmed_g.value_or(0) + cast.plugs_g.value_or(0))
                                 : std::nullopt;
        table.rows.push_back({{drawer_words(summary, cast.drawer), true, {}},
                              {QString::number(log.casts), false, {}},
                              {},
                              {QString::fromStdString(cast.day), false, {}},
                              {grams(cast.mixed_g), false, {}},
                              {grams(cast.cast_g), true, {}},
                              {grams(trimmed), false, {}},
                              {grams(seen.wasted_g), false, {}},
                              {grams(cast.wax_g), false, {}},
                              {grams(cast.clay_g), false, {}},
                              {QString::number(log.on_these_holes), false, {}},
                              {},
                              {QString::fromStdString(cast.note), false, {}}});
    }
    return table;
}

} // namespace drawercast::summary
