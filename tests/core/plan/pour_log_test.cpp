// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/read.h"
#include "job/store.h"
#include "job/write.h"
#include "plan/as_built.h"
#include "plan/pour_log.h"
#include "plan/pour_steps.h"

#include "core/plan/sample_job.h"

#include <gtest/gtest.h>

#include <csignal>
#include <filesystem>
#include <random>
#include <sys/wait.h>
#include <unistd.h>

namespace drawercast::plan {
namespace {

job::Job begun() { return with_mark(testing::worked_job(), "d1", begin_pour, 1000); }

TEST(PourLog, goes_on_where_it_was) {
    auto job = begun();
    for (const auto& [step, at] : {std::pair{"gate-1", 1001.0}, {"start", 1100.5}, {"mixed", 1120.0}})
        job = with_mark(std::move(job), "d1", step, at);
    const auto again = job::read_job(job::write_job(job));
    ASSERT_TRUE(again);
    const auto run = last_run(again->log, "d1");
    ASSERT_TRUE(run);
    EXPECT_EQ(run->done.back(), (Done{"mixed", 1120}));
    EXPECT_DOUBLE_EQ(*run->stopwatch_s(1130), 29.5);
    EXPECT_TRUE(is_running(*run, 1130));
    EXPECT_FALSE(is_running(*run, 1100.5 + fresh_s));
    EXPECT_EQ(running_drawer(*again, 1130), "d1");
    EXPECT_EQ(running_drawer(with_mark(job, "d1", last_step, 9000), 9001), "");
}

TEST(PourLog, taking_back_and_beginning_anew_lose_nothing) {
    auto job = with_mark(with_mark(begun(), "d1", "start", 1100), "d1", "mixed", 1120);
    const auto back = with_last_taken_back(job, "d1", 1121);
    EXPECT_EQ(back.log.size(), job.log.size() + 1);
    EXPECT_FALSE(last_run(back.log, "d1")->is_done("mixed"));
    EXPECT_TRUE(last_run(back.log, "d1")->is_done("start"));
    EXPECT_FALSE(last_run(with_last_taken_back(back, "d1", 1122).log, "d1")->is_done("start"));
    const auto empty = begun();
    EXPECT_EQ(with_last_taken_back(empty, "d1", 1001), empty);
    const auto anew = with_mark(job, "d1", begin_pour, 2000);
    EXPECT_TRUE(last_run(anew.log, "d1")->done.empty());
    EXPECT_FALSE(last_run(job.log, "d2"));
}

/// Any script of marks and takings back leaves what a list with push and pop leaves.
TEST(PourLog, marks_and_takings_back_are_a_stack) {
    std::mt19937 random(7);
    for (int round = 0; round < 200; ++round) {
        auto job = begun();
        std::vector<Done> stack;
        for (int i = 0; i < 20; ++i) {
            const double at = 1001 + i;
            if (random() % 3 == 0) {
                job = with_last_taken_back(std::move(job), "d1", at);
                if (!stack.empty()) stack.pop_back();
            } else {
                const std::string step = "step-" + std::to_string(random() % 5);
                job = with_mark(std::move(job), "d1", step, at);
                stack.push_back({step, at});
            }
        }
        EXPECT_EQ(last_run(job.log, "d1")->done, stack) << "round " << round;
    }
}

/// A program that is killed while it marks leaves a file with every mark it was done saving.
TEST(PourLog, survives_a_kill_between_and_during_saves) {
    const auto folder = std::filesystem::temp_directory_path() / ("pour-log-" + std::to_string(getpid()));
    std::filesystem::create_directories(folder);
    const std::string path = (folder / "job.drawercast.json").string();
    for (int round = 0; round < 12; ++round) {
        ASSERT_TRUE(job::save_job(begun(), path));
        int told[2];
        ASSERT_EQ(pipe(told), 0);
        const pid_t child = fork();
        if (child == 0) {
            auto job = begun();
            for (int i = 0; i < 5000; ++i) {
                job = with_mark(std::move(job), "d1", "step-" + std::to_string(i), 1001 + i);
                if (!job::save_job(job, path)) _exit(1);
                const char done = 'x';
                if (write(told[1], &done, 1) != 1) _exit(1);
            }
            _exit(0);
        }
        close(told[1]);
        int kept = 0;
        char one;
        while (kept < 1 + round && read(told[0], &one, 1) == 1) ++kept;
        kill(child, SIGKILL);
        while (read(told[0], &one, 1) == 1) ++kept;
        close(told[0]);
        waitpid(child, nullptr, 0);
        const auto again = job::load_job(path);
        ASSERT_TRUE(again);
        const auto run = last_run(again->log, "d1");
        ASSERT_TRUE(run);
        EXPECT_GE(static_cast<int>(run->done.size()), kept); // one more may have been renamed in and not told
        EXPECT_LE(static_cast<int>(run->done.size()), kept + 1);
    }
    std::filesystem::remove_all(folder);
}

TEST(PourLog, a_rehearsal_gives_the_shops_times) {
    auto job = with_mark(testing::worked_job(), "d1", begin_rehearsal, 100);
    for (const auto& [step, at] : {std::pair{"start", 100.0},
                                   {"mixed", 120.0},
                                   {"poured", 131.26},
                                   {"plate-on", 140.0},
                                   {"closed", 200.0}})
        job = with_mark(std::move(job), "d1", step, at);
    job::Shop shop;
    shop.drivers = 2;
    shop.pour_s = 9;
    shop.seconds_per_closure = 3;
    const auto now = with_rehearsed_times(shop, *last_run(job.log, "d1"), {1126, 24, 36, false});
    EXPECT_FALSE(now.pour_s.has_value()) << "a drawer of another size takes another time";
    EXPECT_DOUBLE_EQ(now.pour_l_s, 0.1); // 1126 mL in 11.26 s
    EXPECT_DOUBLE_EQ(now.set_plate_s, 8.7);
    EXPECT_DOUBLE_EQ(now.seconds_per_closure, 5); // 60 s in place of 36
    EXPECT_TRUE(now.closures.empty());
    const auto kinds = with_rehearsed_times(shop, *last_run(job.log, "d1"), {1126, 24, 30, true}).closures;
    const auto before = job::closures_of(shop);
    ASSERT_EQ(kinds.size(), before.size());
    for (std::size_t i = 0; i < kinds.size(); ++i)
        if (before[i].seconds) {
            EXPECT_DOUBLE_EQ(*kinds[i].seconds, 2 * *before[i].seconds) << kinds[i].name;
        }
    EXPECT_FALSE(is_running(*last_run(job.log, "d1"), 201));
}

TEST(PourSteps, follow_the_clock_of_the_plan) {
    const auto job = testing::worked_job();
    const Plan plan = compute(job);
    const auto steps = pour_steps(job, plan.drawers[0]);
    ASSERT_FALSE(steps.empty());
    double due = 0;
    for (const auto& step : steps)
        if (step.id == "mixed" || step.id == "poured" || step.id == "plate-on") {
            EXPECT_GE(*step.due_s, due) << step.id;
            due = *step.due_s;
        } else if (step.id == "closed") {
            EXPECT_FALSE(step.due_s); // nobody knows before the plate is worked out
        }
    const auto plate =
        std::find_if(steps.begin(), steps.end(), [](const PourStep& step) { return step.id == "plate-on"; });
    ASSERT_NE(plate, steps.end());
    EXPECT_EQ(plate->limit_s, plan.drawers[0].times->touch_s);
    EXPECT_EQ(steps.back().id, last_step);
    due = 0; // once the plate is closed, things come by the clock
    for (auto i = static_cast<std::size_t>(plate - steps.begin()) + 2; i < steps.size(); ++i) {
        EXPECT_GE(*steps[i].due_s, due) << steps[i].id;
        due = *steps[i].due_s;
    }
    const auto rehearsal = rehearsal_steps(job, plan.drawers[0]);
    EXPECT_EQ(rehearsal.front().id, clock_step);
    EXPECT_EQ(rehearsal.back().id, "closed");
}

TEST(PourSteps, narrow_slots_are_brushed_before_the_foam_is_poured) {
    const auto job = testing::worked_job();
    DrawerPlan drawer = compute(job).drawers[0];
    const auto details = [&] {
        for (const auto& step : pour_steps(job, drawer))
            if (step.id == "poured") return step.details;
        return std::vector<Phrase>();
    };
    EXPECT_EQ(details().size(), 2U);
    drawer.checks.push_back(layout::check_of(layout::Code::slot_narrow, layout::Severity::look, 8, 10));
    ASSERT_EQ(details().size(), 3U);
    EXPECT_EQ(english(details().front()), "first brush some of the foam into the narrow slots");
}

TEST(PourSteps, slow_closing_is_followed_by_pegging_alone_and_passed_by_it_in_company) {
    auto job = testing::worked_job();
    const Plan plan = compute(job);
    DrawerPlan drawer = plan.drawers[0];
    mold::Plate plate;
    plate.answer.design.order = {0, 1, 2, 3};
    plate.closing.close_s = 400; // long after the mold is full
    drawer.plate = std::make_shared<const mold::Plate>(plate);
    for (const int people : {1, 2}) {
        job::Shop shop = *job.shop;
        shop.people = people;
        job.shop = shop;
        double due = 0;
        std::vector<std::string> order;
        for (const auto& step : pour_steps(job, drawer)) {
            EXPECT_GE(step.due_s.value_or(due), due) << step.id << ", people: " << people;
            due = step.due_s.value_or(due);
            if (step.id == "closed" || step.id == "pegged") order.push_back(step.id);
        }
        EXPECT_EQ(order.front(), people == 1 ? "closed" : "pegged");
        EXPECT_EQ(order.size(), 2U);
    }
}

TEST(PourSteps, readings_are_of_each_part_alone_within_half_a_step) {
    const auto job = testing::worked_job();
    auto dose = *compute(job).drawers[0].dose;
    for (const double step : {0.1, 1.0, 5.0}) {
        dose.pigment_ml = 0;
        const auto plain = scale_readings(dose, step);
        ASSERT_EQ(plain.size(), 2U);
        EXPECT_TRUE(plain.back().zero_first) << "part A waits in a cup of its own";
        EXPECT_NEAR(plain.front().shown_g, dose.b_g / dose.batches, step / 2 + 1e-9);
        EXPECT_NEAR(plain.back().shown_g, dose.a_g / dose.batches, step / 2 + 1e-9);
        dose.pigment_ml = 10;
        const auto with = scale_readings(dose, step);
        ASSERT_EQ(with.size(), 3U);
        EXPECT_TRUE(with.back().zero_first);
        EXPECT_NEAR(with.back().shown_g, dose.a_g / dose.batches, step / 2 + 1e-9);
    }
}

TEST(PourSteps, a_mold_measured_as_planned_takes_the_plans_dose) {
    auto job = testing::worked_job();
    const Plan plan = compute(job);
    EXPECT_EQ(dose_to_pour(job, plan.drawers[0]), plan.drawers[0].dose);
    job::AsBuilt built;
    built.drawer = "d1";
    job.as_built = {built};
    EXPECT_DOUBLE_EQ(dose_to_pour(job, plan.drawers[0])->poured_ml, plan.drawers[0].dose->poured_ml);
    job.as_built[0].walls_mm = {61};
    EXPECT_GT(dose_to_pour(job, plan.drawers[0])->poured_ml, plan.drawers[0].dose->poured_ml);
}

TEST(PourSteps, past_the_time_is_never_later_for_being_too_slow) {
    const Plan plan = compute(testing::worked_job());
    DrawerPlan drawer = plan.drawers[0];
    const double touch = drawer.times->touch_s;
    const auto latest = [&](double plate_on_s, double margin_s) {
        mold::Plate plate;
        plate.closing.plate_on_s = plate_on_s, plate.closing.close_margin_s = margin_s;
        drawer.plate = std::make_shared<const mold::Plate>(plate);
        return *latest_plate_on_s(drawer);
    };
    EXPECT_DOUBLE_EQ(latest(46, 2.3), 48.3);
    EXPECT_DOUBLE_EQ(latest(49, -0.7), 48.3);
    EXPECT_DOUBLE_EQ(latest(46, -50), 0);
    EXPECT_DOUBLE_EQ(latest(46, 1000), touch);
}

} // namespace
} // namespace drawercast::plan
