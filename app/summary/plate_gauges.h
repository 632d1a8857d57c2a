// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include "summary/page_frame.h"

#include <vector>

namespace drawercast::summary {

/// What is built, how it is closed, and what would have come next.
std::vector<QString> plate_lines(const Summary& summary, const plan::DrawerPlan& plan);

/// Every value of the plate beside its limit, in three columns; what decides carries the word. Returns the
/// height used.
double write_plate_gauges(sheets::Inks& inks, Vec top_left, double width, const Summary& summary,
                          const plan::DrawerPlan& plan);

} // namespace drawercast::summary
