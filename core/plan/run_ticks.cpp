// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/run_ticks.h"

#include <algorithm>

namespace drawercast::plan {

std::string task_tick(const runsheet::Task& task) { return "run/" + task.id; }

std::string gate_tick(const runsheet::Task& task, std::size_t gate) {
    return task_tick(task) + "/gate-" + std::to_string(gate + 1);
}

bool is_ticked(const std::vector<job::Mark>& log, std::string_view tick) {
    const auto last = std::find_if(log.rbegin(), log.rend(), [&](const job::Mark& mark) {
        return mark.drawer.empty() && mark.step == tick;
    });
    return last != log.rend() && !last->back;
}

bool gates_ticked(const std::vector<job::Mark>& log, const runsheet::Task& task) {
    for (std::size_t gate = 0; gate < task.gates.size(); ++gate)
        if (!is_ticked(log, gate_tick(task, gate))) return false;
    return true;
}

job::Job with_tick(job::Job job, const std::string& tick, bool ticked, double at_s) {
    if (is_ticked(job.log, tick) != ticked) job.log.push_back({{}, tick, at_s, !ticked});
    return job;
}

job::Job without_ticks(job::Job job, const std::vector<runsheet::Task>& tasks, double at_s) {
    for (const auto& task : tasks) {
        job = with_tick(std::move(job), task_tick(task), false, at_s);
        for (std::size_t gate = 0; gate < task.gates.size(); ++gate)
            job = with_tick(std::move(job), gate_tick(task, gate), false, at_s);
    }
    return job;
}

} // namespace drawercast::plan
