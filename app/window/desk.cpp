// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/desk.h"

#include "document/document.h"
#include "document/selection.h"

#include <utility>

namespace drawercast::app {

const plan::DrawerPlan* shown_plan(const Desk& desk) {
    return plan::find_drawer(desk.document.plan(), desk.selection.drawer());
}

bool commit(const Desk& desk, const QString& what, job::Job job) {
    if (job == desk.document.job()) return false;
    desk.document.commit(what, std::move(job));
    return true;
}

} // namespace drawercast::app
