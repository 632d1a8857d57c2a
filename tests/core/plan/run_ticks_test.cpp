// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/edit.h"
#include "job/read.h"
#include "job/write.h"
#include "plan/pour_log.h"
#include "plan/run_ticks.h"

#include <gtest/gtest.h>

namespace drawercast::plan {
namespace {

runsheet::Task pour_task() {
    runsheet::Task task;
    task.id = "d1/pour";
    task.gates = {verbatim("dry"), verbatim("level")};
    return task;
}

TEST(RunTicks, a_tick_stands_until_it_is_taken_back_and_the_log_keeps_both) {
    const auto tick = task_tick(pour_task());
    auto job = with_tick(job::Job(), tick, true, 10);
    EXPECT_TRUE(is_ticked(job.log, tick));
    EXPECT_EQ(with_tick(job, tick, true, 11), job) << "ticked already";
    job = with_tick(job, tick, false, 12);
    EXPECT_FALSE(is_ticked(job.log, tick));
    EXPECT_EQ(job.log.size(), 2U);
    EXPECT_TRUE(is_ticked(with_tick(job, tick, true, 13).log, tick));
}

TEST(RunTicks, gates_are_ticked_once_all_are) {
    auto job = with_tick(job::Job(), gate_tick(pour_task(), 0), true, 1);
    EXPECT_FALSE(gates_ticked(job.log, pour_task()));
    job = with_tick(job, gate_tick(pour_task(), 1), true, 2);
    EXPECT_TRUE(gates_ticked(job.log, pour_task()));
    EXPECT_FALSE(is_ticked(job.log, task_tick(pour_task()))) << "its gates are not the pour";
    EXPECT_FALSE(gates_ticked(without_ticks(job, {pour_task()}, 3).log, pour_task()));
}

TEST(RunTicks, the_pour_of_a_drawer_does_not_see_them) {
    auto job = with_mark(job::Job(), "d1", begin_pour, 1);
    const auto before = last_run(job.log, "d1");
    job = with_tick(job, gate_tick(pour_task(), 0), true, 2);
    EXPECT_EQ(last_run(job.log, "d1"), before);
}

TEST(RunTicks, they_are_kept_in_the_file) {
    const auto tick = gate_tick(pour_task(), 1);
    const auto job = with_tick(job::new_job({400, 300, 90, 60}), tick, true, 1000);
    const auto read = job::read_job(job::write_job(job));
    ASSERT_TRUE(read);
    EXPECT_TRUE(is_ticked(read->log, tick));
}

} // namespace
} // namespace drawercast::plan
