// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include <QString>

#include <string>

namespace drawercast::app {

/// From now on a screen reader finds the pockets on the drawer plan as items of a list, each with its name,
/// depth and zone, its place on the screen, and whether it is chosen or locked. Once a program run.
void tell_readers_of_pockets();

/// "Data logger, 45 mm deep, zone E5, locked"; empty: no such pocket.
QString spoken_pocket(const job::Job& job, const plan::DrawerPlan& plan, const std::string& subject);

} // namespace drawercast::app
