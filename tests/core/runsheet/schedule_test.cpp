// SPDX-License-Identifier: GPL-3.0-or-later
#include "runsheet/schedule.h"
#include "runsheet/steps.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>

namespace drawercast::runsheet {

namespace {

Task task(const char* id, double hands, double wait, std::vector<std::string> after = {}) {
    return {id, verbatim(id), {}, hands, wait, std::move(after), false, false, {}, {}};
}

std::map<std::string, Slot> by_id(const std::vector<Task>& tasks, const Schedule& schedule) {
    std::map<std::string, Slot> slots;
    for (const auto& slot : schedule.entries) slots.emplace(tasks[slot.task].id, slot);
    return slots;
}

constexpr double at(int day, int hour, int minute = 0) { return ((day - 1) * 24 + hour) * 60 + minute; }

/// Random tasks, each after some of those before it.
std::vector<Task> random_tasks(std::mt19937& random) {
    std::vector<Task> tasks;
    const int n = static_cast<int>(random() % 30) + 1;
    for (int i = 0; i < n; ++i) {
        const std::string id = "t" + std::to_string(i);
        Task one = task(id.c_str(), static_cast<double>(random() % 700),
                        random() % 3 == 0 ? static_cast<double>(random() % 2000) : 0);
        one.in_one_go = one.hands_min < 540 && random() % 4 == 0;
        for (int b = 0; b < i; ++b)
            if (random() % 6 == 0) one.after.push_back("t" + std::to_string(b));
        tasks.push_back(one);
    }
    return tasks;
}

} // namespace

TEST(Schedule, a_day_is_worked_out_by_hand) {
    // 8 to 17 h: a needs 6 h; its glue 20 h; b 2 h meanwhile; c waits for the glue.
    const std::vector<Task> tasks{task("a", 360, 1200), task("b", 120, 0), task("c", 60, 0, {"a"})};
    const auto slots = by_id(tasks, schedule(tasks, {}));
    EXPECT_EQ(slots.at("a").begins_min, at(1, 8));
    EXPECT_EQ(slots.at("a").left_min, at(1, 14));
    EXPECT_EQ(slots.at("a").ready_min, at(2, 10));
    EXPECT_EQ(slots.at("b").begins_min, at(1, 14)) << "hands are free while the glue sets";
    EXPECT_EQ(slots.at("c").begins_min, at(2, 10));
    EXPECT_TRUE(slots.at("a").critical);
    EXPECT_TRUE(slots.at("c").critical);
    EXPECT_FALSE(slots.at("b").critical);
}

TEST(Schedule, work_stops_at_closing_but_not_what_is_done_in_one_go) {
    std::vector<Task> tasks{task("long", 600, 0), task("pour", 120, 0, {"long"}),
                            task("late", 420, 0, {"pour"})};
    tasks[1].in_one_go = true;
    tasks[2].in_one_go = true;
    const auto slots = by_id(tasks, schedule(tasks, {}));
    EXPECT_EQ(slots.at("long").left_min, at(2, 9)) << "an hour is left for the next day";
    EXPECT_EQ(slots.at("pour").left_min, at(2, 11));
    EXPECT_EQ(slots.at("late").begins_min, at(3, 8)) << "seven hours do not fit before five";
}

TEST(Schedule, nobody_is_in_two_places_or_there_at_night_and_nothing_is_begun_too_soon) {
    std::mt19937 random(11);
    for (int round = 0; round < 200; ++round) {
        const auto tasks = random_tasks(random);
        const auto plan = schedule(tasks, {});
        const auto slots = by_id(tasks, plan);
        ASSERT_EQ(slots.size(), tasks.size());
        double hands_off = 0;
        for (const auto& slot : plan.entries) {
            EXPECT_GE(slot.begins_min, hands_off);
            hands_off = slot.left_min;
            EXPECT_GE(minute_of_day(slot.begins_min), 8 * 60);
            EXPECT_LT(minute_of_day(slot.begins_min), 17 * 60);
            EXPECT_LE(minute_of_day(slot.left_min), 17 * 60);
            const Task& one = tasks[slot.task];
            for (const auto& before : one.after) EXPECT_GE(slot.begins_min, slots.at(before).ready_min);
            if (one.in_one_go) {
                EXPECT_EQ(slot.left_min - slot.begins_min, one.hands_min);
            }
        }
    }
}

TEST(Schedule, the_critical_ones_reach_from_the_start_to_the_end) {
    std::mt19937 random(5);
    for (int round = 0; round < 50; ++round) {
        const auto tasks = random_tasks(random);
        const auto plan = schedule(tasks, {});
        const auto last =
            std::max_element(plan.entries.begin(), plan.entries.end(),
                             [](const Slot& a, const Slot& b) { return a.ready_min < b.ready_min; });
        EXPECT_TRUE(last->critical);
        EXPECT_TRUE(plan.entries.front().critical) << "the chain begins with what is begun first";
        EXPECT_EQ(plan.days, day_of(last->ready_min));
    }
}

TEST(Steps, three_drawers_take_the_days_the_trade_says) {
    std::vector<DrawerWork> drawers;
    for (const char* id : {"d1", "d2", "d3"}) {
        DrawerWork drawer;
        drawer.id = drawer.name = id;
        drawer.blocks = 14;
        drawer.closures = 24;
        drawer.vents = 8;
        drawer.insert_m2 = 0.17;
        drawer.demold_min = 90;
        drawers.push_back(drawer);
    }
    const auto tasks = tasks_for(drawers, {23, 2});
    const auto slots = by_id(tasks, schedule(tasks, {}));
    int last_open = 0;
    for (const char* id : {"d1", "d2", "d3"})
        last_open = std::max(last_open, day_of(slots.at(std::string(id) + "/open").left_min));
    EXPECT_GE(last_open, 3);
    EXPECT_LE(last_open, 5) << "four to five days for three drawers (common practice, no source)";
    EXPECT_GE(slots.at("d1/pour").begins_min, slots.at("d1/seal-3").ready_min)
        << "the sealer dries overnight";
}

TEST(Steps, a_cool_shop_waits_longer_and_never_less_than_the_foam_asks) {
    const auto cure = [](double temperature_c, double demold_min) {
        DrawerWork drawer;
        drawer.id = "d1";
        drawer.demold_min = demold_min;
        for (const auto& task : tasks_for({drawer}, {temperature_c, 1}))
            if (task.id == "d1/pour") return task.wait_min;
        return 0.0;
    };
    EXPECT_EQ(cure(23, 60), cure_min);
    EXPECT_EQ(cure(16, 60), cool_cure_min);
    EXPECT_EQ(cure(23, 300), 300);
}

} // namespace drawercast::runsheet
