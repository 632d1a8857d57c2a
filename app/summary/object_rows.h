// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include "sheets/table.h"
#include "summary/page_frame.h"

namespace drawercast::summary {

/// "160 × 60 × 34", "⌀80 × 44", "120 × ⌀26": the object as measured, in display units without the unit.
QString size_words(const job::Object& object, job::DisplayUnits units);

/// The objects with a pocket in this drawer: sketch, size, depth, weight, how they hold, how many are here.
sheets::Table object_table(const Summary& summary, const job::Drawer& drawer, const plan::DrawerPlan& plan);

} // namespace drawercast::summary
