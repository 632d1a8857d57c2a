// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include <QString>

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

/// Makes `job` the open one, as one step of undo that is called `what`; false where it is so already.
bool commit(const Desk& desk, const QString& what, job::Job job);

} // namespace drawercast::app
