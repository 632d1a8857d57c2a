// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/desk.h"

#include "document/document.h"
#include "document/selection.h"

namespace drawercast::app {

const plan::DrawerPlan* shown_plan(const Desk& desk) {
    return plan::find_drawer(desk.document.plan(), desk.selection.drawer());
}

} // namespace drawercast::app
