// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "sheets/sheet.h"

namespace drawercast::sheets {

/// Whether pockets without room for their name show the letter of a table beside the plan.
enum class Keys { none, letters };

/// Whether the drawer's wall is lettered, so that a check's zone can be found.
enum class Zones { none, lettered };

/// The drawer as one looks into it: wall with zones, insert, pockets by depth, notches, obstructions, checks
/// in red and ochre with both numbers, dimensions. `plan` is that of `drawer`.
Sheet<shape::InDrawer> drawer_plan(const job::Job& job, const job::Drawer& drawer,
                                   const plan::DrawerPlan& plan, Keys keys = Keys::none,
                                   Zones zones = Zones::lettered);

/// What moves while the pointer does, as drawer_plan() puts it: the washes of some pockets, their words, and
/// all checks.
std::vector<Mark> pocket_washes(const job::Job& job, const job::Drawer& drawer, const plan::DrawerPlan& plan,
                                const std::vector<std::string>& subjects);
std::vector<Mark> pocket_words(const job::Job& job, const plan::DrawerPlan& plan,
                               const std::vector<std::string>& subjects);
std::vector<Mark> check_marks(const job::Job& job, const plan::DrawerPlan& plan);

/// The same at true size to lay into the drawer: lines and letters only, nothing washed or hatched.
Sheet<shape::InDrawer> drawer_check(const job::Job& job, const job::Drawer& drawer,
                                    const plan::DrawerPlan& plan);

} // namespace drawercast::sheets
