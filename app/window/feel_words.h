// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <QString>

namespace drawercast::app {

/// How a pocket holds its object, and whether two fingers reach it, in sentences; empty where there is no
/// such pocket. Looks at every wall of the drawer: for one pocket that was chosen, not for each step of a
/// drag.
QString feel_words(const job::Job& job, const plan::DrawerPlan& drawer, const std::string& subject);

} // namespace drawercast::app
