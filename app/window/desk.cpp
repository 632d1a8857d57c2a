// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/desk.h"

#include "document/document.h"
#include "document/selection.h"

namespace drawercast::app {

const plan::DrawerPlan* shown_plan(const Desk& desk) {
    for (const auto& drawer : desk.document.plan().drawers)
        if (drawer.id == desk.selection.drawer()) return &drawer;
    return nullptr;
}

} // namespace drawercast::app
