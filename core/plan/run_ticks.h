// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "runsheet/task.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

/// What was ticked on the run sheet. The job's log keeps it as marks of the job as a whole, so that the runs
/// of plan/pour_log.h, each of one drawer, don't see them.
namespace drawercast::plan {

std::string task_tick(const runsheet::Task& task);                   ///< "run/d1/seal-2"
std::string gate_tick(const runsheet::Task& task, std::size_t gate); ///< "run/d1/pour/gate-3", from 1

bool is_ticked(const std::vector<job::Mark>& log, std::string_view tick);
/// Whether each gate is; true where there is none.
bool gates_ticked(const std::vector<job::Mark>& log, const runsheet::Task& task);

/// `at_s` since 1970, UTC. Unchanged where it stands so already.
job::Job with_tick(job::Job job, const std::string& tick, bool ticked, double at_s);
/// For the next cast: every tick of these tasks taken back; the log keeps them all.
job::Job without_ticks(job::Job job, const std::vector<runsheet::Task>& tasks, double at_s);

} // namespace drawercast::plan
