// SPDX-License-Identifier: GPL-3.0-or-later
// What the window leaves to workers, with the window's own work beside it: for ThreadSanitizer to look at
// (packaging/test.sh --threads), and in every run for the answers. Jobs and answers are shared by pointer
// between the threads, never changed once shared.
#include "arrange/drawer.h"
#include "job/catalog.h"
#include "job/edit.h"
#include "job/file_system.h"
#include "job/store.h"
#include "job/write.h"
#include "plan/air_stage.h"
#include "plan/builder.h"
#include "plan/planner.h"

#include "core/plan/sample_job.h"

#include <gtest/gtest.h>

#include <atomic>
#include <filesystem>
#include <mutex>
#include <optional>
#include <thread>
#include <vector>

namespace drawercast::plan {
namespace {

/// Two empty drawers: a whole answer in a moment.
job::Job small_job(double width_mm) {
    job::DrawerSize size;
    size.width_mm = width_mm;
    size.depth_mm = 150;
    job::Job job = job::new_job(size);
    job::Drawer second = *job.drawers.front(); // drawers are worked out side by side
    second.id = "d2";
    job.drawers.emplace_back(second);
    return job;
}

/// A drag of the first pocket as the window does it, an answer and a text at each step.
void drag(job::Job job, const std::atomic_bool& enough) {
    Planner planner;
    for (int step = 0; step < 200 && !enough; ++step) {
        job = job::moved(job, {"R1#1"}, {step % 2 == 0 ? 1.0 : -1.0, 0});
        EXPECT_EQ(planner.fast(job).drawers.size(), 1u);
        EXPECT_FALSE(job::write_job(job).empty());
    }
}

TEST(Workers, two_builders_answer_at_the_same_time) {
    const job::Job job = small_job(200);
    const Plan quick = compute(job);
    std::vector<std::optional<Plan>> answers(2);
    {
        std::vector<std::jthread> workers;
        for (auto& answer : answers)
            workers.emplace_back([&] { answer = Builder().build(job, quick, never_stop); });
    }
    ASSERT_TRUE(answers[0] && answers[1]);
    EXPECT_TRUE(same(*answers[0], *answers[1]));
}

TEST(Workers, a_build_is_stopped_by_the_next_edit) {
    const job::Job job = testing::worked_job();
    const Plan quick = compute(job);
    std::atomic_bool asked = false;
    std::atomic_bool stop = false;
    std::optional<Plan> answer;
    std::jthread worker([&] {
        answer = Builder().build(job, quick, [&](double) {
            asked = true;
            return stop.load();
        });
        asked = true;
    });
    drag(job, asked);
    stop = true;
    worker.join();
    EXPECT_FALSE(answer) << "what was stopped is no answer";
}

TEST(Workers, vents_are_sketched_on_an_answer_while_the_next_is_worked_out) {
    const job::Job job = testing::worked_job();
    AirStage stage;
    const auto answer = [&stage](const job::Job& of) {
        DrawerPlan plan = compute(of).drawers.front();
        EXPECT_TRUE(stage.map(of, *of.drawers.front(), plan, never_stop));
        EXPECT_TRUE(stage.vent(of, *of.drawers.front(), {}, 16, plan, never_stop));
        return plan;
    };
    const DrawerPlan last = answer(job);
    ASSERT_TRUE(last.air);
    const auto before = air_tried(job, *job.drawers.front(), last, *last.air);
    const job::Job next = job::moved(job, {"C2#1"}, {5, 0});
    std::jthread worker([&] { answer(next); });
    for (int i = 0; i < 3; ++i) {
        const auto tried = air_tried(job, *job.drawers.front(), last, *last.air);
        EXPECT_TRUE(air::same(*tried, *before));
    }
}

TEST(Workers, an_arrangement_is_previewed_while_it_is_sought) {
    job::Job job = testing::worked_job();
    job::Drawer drawer = *job.drawers.front();
    drawer.pockets.clear();
    job.drawers.front() = drawer;
    std::mutex guard;
    std::optional<arrange::Arranged> shown; // what the worker told last
    std::atomic_bool over = false;
    arrange::Arranged found;
    std::jthread worker([&] {
        found = arrange::arranged(job, arrange::Moving::unlocked, {20'000, 1}, never_stop,
                                  [&](const arrange::Arranged& better) {
                                      const std::lock_guard lock(guard);
                                      shown = better;
                                  });
        over = true;
    });
    while (!over) {
        std::optional<arrange::Arranged> preview;
        {
            const std::lock_guard lock(guard);
            preview = shown;
        }
        EXPECT_EQ(compute(preview ? preview->job : job).drawers.size(), 1u);
    }
    worker.join();
    EXPECT_EQ(found.placed + found.left, 6);
}

TEST(Workers, two_saves_of_one_file_leave_one_of_both_whole) {
    const auto folder =
        std::filesystem::temp_directory_path() / ("drawercast-workers-" + job::process_number());
    std::filesystem::create_directory(folder);
    const std::string path = (folder / "job.drawercast.json").string();
    const std::vector<job::Job> jobs{small_job(300), small_job(420)};
    ASSERT_TRUE(job::save_job(jobs[0], path));
    {
        std::vector<std::jthread> writers;
        for (const job::Job& job : jobs)
            writers.emplace_back([&path, job] {
                for (int i = 0; i < 20; ++i) EXPECT_TRUE(job::save_job(job, path));
            });
        for (int i = 0; i < 20; ++i) {
            const auto read = job::load_job(path);
            ASSERT_TRUE(read);
            EXPECT_TRUE(*read == jobs[0] || *read == jobs[1]);
        }
    }
    EXPECT_TRUE(job::load_job(path + ".before"));
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder), {}), 2) << "no draft stays";
    std::filesystem::remove_all(folder);
}

} // namespace
} // namespace drawercast::plan
