// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/cost_acts.h"

#include "job/catalog.h"
#include "plan/cost.h"

#include "document/document.h"
#include "window/actions.h"
#include "window/asking.h"
#include "window/job_acts.h"

#include <algorithm>

namespace drawercast::app {

CostActs::CostActs(const Desk& desk, JobActs& jobs, Actions& actions, QObject* parent)
    : QObject(parent), desk_(desk), jobs_(jobs) {
    actions.on("job.cost", [this] { show_cost(); });
    actions.on("job.quick_quote", [this] { quote_quickly(); });
}

void CostActs::show_cost() {
    const auto& plan = desk_.document.plan();
    if (const auto basis = plan::cost_basis(desk_.document.job(), plan))
        return desk_.asking.show_cost(*basis, desk_.document.job());
    const bool dosed = std::all_of(plan.drawers.begin(), plan.drawers.end(),
                                   [](const plan::DrawerPlan& drawer) { return drawer.dose.has_value(); });
    emit said(dosed ? tr("What to cut and buy is still being worked out: ask again in a moment.")
                    : tr("A drawer has no dose yet: the checks say why."));
}

/// With the open job's foam and prices, or those a new one starts with.
void CostActs::quote_quickly() {
    const auto& open = desk_.document.job();
    auto job = desk_.asking.quick_quote(open.drawers.empty() ? job::new_job({}) : open);
    if (job && jobs_.may_leave()) desk_.document.replace(std::move(*job), {}, false);
}

} // namespace drawercast::app
