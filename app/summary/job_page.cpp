// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/job_page.h"

#include "language/spoken.h"
#include "summary/assumptions.h"
#include "summary/cautions.h"
#include "summary/check_list.h"
#include "summary/column.h"

#include <algorithm>

namespace drawercast::summary {

using theme::Face;

namespace {

void add_purchase_and_checks(Column& column, const Summary& summary, const plan::Plan& plan) {
    column.head(language::tr("Foam to buy, whole job"), 60);
    for (const QString& line : purchase_lines(summary, plan))
        column.lines(line, {Face::regular, 11.5}, 15, 0);
    column.down(12);
    const auto checks = listed(plan.checks);
    if (checks.empty()) return;
    column.head(language::tr("Checks of the whole job"), 60);
    for (const auto& check : checks) {
        const double height = check_height(check, column.width(), summary);
        if (column.free() < height) column.turn_page();
        write_check(column.inks(), column.here(), column.width(), check, summary);
        column.down(height);
    }
    column.down(6);
}

} // namespace

std::vector<Composed> job_pages(const Summary& summary, const plan::Plan& plan) {
    Column column(summary, {language::tr("all drawers"), {}, false});
    add_purchase_and_checks(column, summary, plan);

    column.head(language::tr("Foam, drawer by drawer"), 60);
    column.table(foam_table(summary, plan));
    column.head(language::tr("What the figures stand on"), 100);
    column.table(assumption_table(summary, plan));

    column.head(language::tr("Cautions"), 190);
    for (const QString& caution : cautions()) {
        column.lines(caution, {Face::regular, 11.5}, 15, 0);
        column.down(5);
    }
    return column.take();
}

} // namespace drawercast::summary
