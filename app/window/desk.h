// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

namespace drawercast::app {

class Asking;
class Document;
class Preferences;
class Selection;

/// What acts work on; handed to them, none of it is global.
struct Desk {
    Document& document;
    Selection& selection;
    Preferences& preferences;
    Asking& asking;
};

/// The plan of the shown drawer; null: none is shown.
const plan::DrawerPlan* shown_plan(const Desk& desk);

} // namespace drawercast::app
