// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/pour_acts.h"

#include "casting/cups.h"
#include "plan/stock_depths.h"

#include "document/document.h"
#include "document/selection.h"
#include "window/actions.h"
#include "window/asking.h"

namespace drawercast::app {

namespace {

/// How many levels of objects have another depth in `now`.
int changed_depths(const job::Job& before, const job::Job& now) {
    int changed = 0;
    for (std::size_t i = 0; i < before.objects.size(); ++i)
        for (std::size_t k = 0; k < before.objects[i]->levels.size(); ++k)
            changed += before.objects[i]->levels[k] == now.objects[i]->levels[k] ? 0 : 1;
    return changed;
}

} // namespace

PourActs::PourActs(const Desk& desk, Actions& actions, QObject* parent) : QObject(parent), desk_(desk) {
    connect_forms(actions);
}

void PourActs::commit(const QString& what, job::Job job) {
    if (job == desk_.document.job()) return; // taken as it was
    desk_.document.commit(what, std::move(job));
}

void PourActs::connect_forms(Actions& actions) {
    const auto form = [this, &actions](const char* id, Asking::PourForm which, const QString& what) {
        actions.on(id, [this, which, what] {
            const auto& document = desk_.document;
            auto job =
                desk_.asking.pour_form(which, document.job(), document.plan(), desk_.selection.drawer());
            if (job) commit(what, std::move(*job));
        });
    };
    form("pour.cup", Asking::PourForm::cup, tr("Test cup"));
    actions.on("pour.depths", [this] { depths_from_boards(); });
}

/// Of the chosen object, or of all where none is chosen.
void PourActs::depths_from_boards() {
    const auto& before = desk_.document.job();
    auto now = plan::with_depths_from_boards(before, desk_.selection.object());
    const int changed = changed_depths(before, now);
    commit(tr("Depths from boards at hand"), std::move(now));
    emit said(changed == 0
                  ? tr("Every depth is a sum of boards at hand already.")
                  : tr("Depths made sums of boards at hand: %1. Undo brings them back.").arg(changed));
}

} // namespace drawercast::app
