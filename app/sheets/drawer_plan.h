// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "sheets/sheet.h"

namespace drawercast::sheets {

/// Whether pockets without room for their name show the letter of a table beside the plan.
enum class Keys { none, letters };

/// The drawer as one looks into it: wall with zones, insert, pockets by depth, notches, obstructions, checks
/// in red and ochre with both numbers, dimensions. `plan` is that of `drawer`.
Sheet<shape::InDrawer> drawer_plan(const job::Job& job, const job::Drawer& drawer,
                                   const plan::DrawerPlan& plan, Keys keys = Keys::none);

/// The same at true size to lay into the drawer: lines and letters only, nothing washed or hatched.
Sheet<shape::InDrawer> drawer_check(const job::Job& job, const job::Drawer& drawer,
                                    const plan::DrawerPlan& plan);

} // namespace drawercast::sheets
