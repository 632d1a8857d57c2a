// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/run_sheet.h"
#include "plan/stock_stage.h"

#include "core/plan/sample_job.h"
#include "core/plan/whole_plan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

namespace drawercast::plan {

TEST(RunSheet, each_drawer_is_cast_after_what_its_mold_needs) {
    auto job = testing::worked_job();
    auto second = *job.drawers.front();
    second.id = "d2";
    second.pockets.clear();
    job.drawers.emplace_back(second);
    const auto sheet = run_sheet(job, compute(job));
    ASSERT_EQ(sheet.schedule.entries.size(), sheet.tasks.size());
    std::set<std::string> poured;
    for (const auto& task : sheet.tasks)
        if (task.in_one_go) {
            poured.insert(task.drawer);
            EXPECT_EQ(task.materials.size(), job.foam->pigment_of_b > 0 ? 3U : 2U);
            EXPECT_FALSE(task.gates.empty());
        }
    EXPECT_EQ(poured.size(), 1U) << "both are called Worked";
    EXPECT_GE(sheet.schedule.days, 4);
}

TEST(RunSheet, gates_are_said_in_the_units_of_the_job) {
    auto job = testing::worked_job();
    const auto plan = compute(job);
    const auto gates = [&](job::DisplayUnits units) {
        job.display_units = units;
        std::string all;
        for (const auto& task : run_sheet(job, plan).tasks)
            for (const auto& gate : task.gates) all += english(gate) + "; ";
        return all;
    };
    const auto metric = gates(job::DisplayUnits::mm), inches = gates(job::DisplayUnits::inch);
    EXPECT_NE(metric.find("parts at 21 to 25 °C"), std::string::npos) << metric;
    EXPECT_NE(inches.find("parts at 70 to 77 °F"), std::string::npos) << inches;
    for (const char* unit : {"°C", " mm"}) EXPECT_EQ(inches.find(unit), std::string::npos) << inches;
}

TEST(RunSheet, parts_are_as_warm_as_the_seconds_are_for) {
    auto job = testing::worked_job();
    job.shop.edit([](job::Shop& shop) { shop.temperature_c = 15; });
    std::string all;
    for (const auto& task : run_sheet(job, compute(job)).tasks)
        for (const auto& gate : task.gates) all += english(gate) + "; ";
    EXPECT_NE(all.find("parts at 13 to 17 °C"), std::string::npos) << all;
}

TEST(RunSheet, shared_walls_are_poured_into_again_once_the_first_cast_is_out) {
    auto job = testing::worked_job();
    auto second = *job.drawers[0];
    second.id = "d2";
    second.pockets.clear();
    job.drawers.emplace_back(second);
    for (const bool share : {false, true}) {
        job.mold.share_walls = share;
        const auto sheet = run_sheet(job, whole(job));
        const auto pour = std::find_if(sheet.tasks.begin(), sheet.tasks.end(),
                                       [](const auto& task) { return task.id == "d2/pour"; });
        ASSERT_NE(pour, sheet.tasks.end());
        EXPECT_EQ(std::count(pour->after.begin(), pour->after.end(), "d1/open"), share ? 1 : 0);
    }
}

/// What the steps take together is what the list of supplies says is used up.
TEST(RunSheet, quantities_stand_where_they_are_needed) {
    const auto job = testing::worked_job();
    const auto plan = compute(job);
    double sealer_ml = 0, release_ml = 0;
    for (const auto& task : run_sheet(job, plan).tasks)
        for (const auto& material : task.materials) {
            const std::string line = english(material);
            if (line.rfind("sealer ", 0) == 0) sealer_ml += std::stod(line.substr(7));
            if (line.rfind("release ", 0) == 0) release_ml += std::stod(line.substr(8));
        }
    constexpr double rounding = 3 * 0.5; // each line is whole milliliters
    for (const auto& supply : stock_of(job, plan).supplies) {
        if (supply.supply == stock::Supply::sealer) {
            EXPECT_NEAR(sealer_ml, 1000 * supply.amount, rounding);
        }
        if (supply.supply == stock::Supply::release) {
            EXPECT_NEAR(release_ml, 1000 * supply.amount, rounding);
        }
    }
    EXPECT_GT(sealer_ml, release_ml);
}

TEST(RunSheet, a_drawer_without_a_dose_is_left_out) {
    auto job = testing::worked_job();
    auto plan = compute(job);
    plan.drawers.front().dose.reset();
    EXPECT_TRUE(run_sheet(job, plan).tasks.empty());
}

} // namespace drawercast::plan
