// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"
#include "runsheet/schedule.h"
#include "runsheet/task.h"

#include <vector>

namespace drawercast::plan {

/// What is done when, from cutting to airing, for all drawers of a job; quick, but made when it is asked for.
/// Drawers without a dose are left out.
struct RunSheet {
    std::vector<runsheet::Task> tasks;
    runsheet::Schedule schedule;
};
RunSheet run_sheet(const job::Job& job, const Plan& plan);

/// The schedule in the shop's hours. A day is as long as what must be done in one go needs, where the shop's
/// is shorter; what needs more than a day and night is broken off after all.
runsheet::Schedule in_shop_hours(std::vector<runsheet::Task>& tasks, const job::Shop& shop);

} // namespace drawercast::plan
