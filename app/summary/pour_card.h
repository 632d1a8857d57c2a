// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"
#include "runsheet/task.h"

#include "summary/drawer_page.h"

#include <vector>

namespace drawercast::summary {

/// One drawer's pour in large letters, to hang where it is read while hands are full: what must be true
/// before `pour`, its task of the run sheet, what to weigh, the seconds, the moment after which the mold is
/// not closed any more, and what to do when it goes wrong. Empty without a dose.
std::vector<Composed> pour_card(const Summary& summary, const plan::DrawerPlan& drawer,
                                const runsheet::Task& pour, const QString& name);

} // namespace drawercast::summary
