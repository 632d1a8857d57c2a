// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit.h"
#include "plan/figures.h"
#include "plan/json_text.h"
#include "plan/plan.h"
#include "plan/sentences.h"

#include "core/plan/sample_job.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace drawercast::plan {
namespace {

bool has(const std::vector<layout::Check>& checks, layout::Code code) {
    return std::any_of(checks.begin(), checks.end(),
                       [&](const layout::Check& check) { return check.code == code; });
}

// A worked drawer reckoned by hand from the formulas (volumes, Pappus' fillets, ideal gas, smoothstep), six
// digits.
TEST(Plan, worked_drawer_through_the_whole_plan) {
    const Plan plan = compute(testing::worked_job());
    const DrawerPlan& drawer = plan.drawers.at(0);
    ASSERT_TRUE(drawer.cavity && drawer.dose && drawer.pressure && drawer.times);
    EXPECT_NEAR(drawer.cavity->gross_mm3, 10368000, 1);
    EXPECT_NEAR(drawer.cavity->blocks_mm3, 1314659.28, 1314659.28 * 1e-6);
    EXPECT_NEAR(drawer.cavity->fillet_mm3, 11246.548, 11246.548 * 1e-6);
    EXPECT_NEAR(drawer.cavity->net_mm3, 9042094.172, 9.0);
    EXPECT_NEAR(drawer.dose->poured_ml, 1733.07, 0.005);
    EXPECT_NEAR(drawer.dose->insert_g, 1906.37, 0.01);
    EXPECT_NEAR(drawer.dose->molded_kg_m3, 210.833, 5e-4);
    EXPECT_NEAR(drawer.pressure->closed_kpa, 18.8026, 5e-5);
    EXPECT_NEAR(drawer.pressure->lift_n, 3249.09, 0.01);
    EXPECT_NEAR(drawer.times->liquid_level_mm, 13.4643, 2e-3); // the hand figure leaves the fillets out too
}

TEST(Plan, mirroring_the_drawer_changes_no_figure) {
    job::Job job = testing::worked_job();
    const Plan before = compute(job);
    job.drawers[0].edit([](job::Drawer& drawer) {
        for (auto& pocket : drawer.pockets) {
            pocket.pose.at.x = 480 - pocket.pose.at.x;
            pocket.pose.turn_deg = -pocket.pose.turn_deg;
        }
    });
    const Plan after = compute(job);
    EXPECT_NEAR(after.drawers[0].cavity->net_mm3, before.drawers[0].cavity->net_mm3, 0.5);
    EXPECT_EQ(after.drawers[0].checks.size(), before.drawers[0].checks.size());
}

TEST(Plan, one_more_block_takes_its_volume) {
    job::Job job = testing::worked_job();
    const double before = compute(job).drawers[0].cavity->net_mm3;
    job = job::with_object(std::move(job), testing::object("R5", shape::Rectangle{40, 30, 0}, 20));
    job = job::placed(std::move(job), "d1", "R5", {{400, 80}, 0});
    const double after = compute(job).drawers[0].cavity->net_mm3;
    const double fillet = 5.365045 * (140 + 2 * 3.14159265 * 0.223367939 * 5); // Pappus
    EXPECT_NEAR(before - after, 40 * 30 * 20 + fillet, 0.05);
}

TEST(Plan, what_must_be_mended_is_said_and_what_is_left_as_is_does_not_count) {
    job::Job job = testing::worked_job();
    EXPECT_FALSE(anything_to_mend(compute(job)));
    job = job::moved(std::move(job), {"R2#1"}, {-50, 0});
    const Plan plan = compute(job);
    EXPECT_TRUE(anything_to_mend(plan));
    EXPECT_TRUE(has(plan.drawers[0].checks, layout::Code::overlap));
}

TEST(Plan, an_object_dunked_deeper_than_its_pocket_is_doubted) {
    const auto doubted = [](double dunked_ml) {
        job::Job job = testing::worked_job();
        job::Object object = *job.objects.front(); // 160 × 80 × 40 mm: 512 mL
        object.volume_ml = dunked_ml;
        job.objects.front() = object;
        const Plan plan = compute(job);
        const auto& checks = plan.drawers.front().checks;
        return std::any_of(checks.begin(), checks.end(), [](const layout::Check& check) {
            return check.code == layout::Code::volume_doubted &&
                   check.subjects == std::vector<std::string>{"R1#1"};
        });
    };
    EXPECT_FALSE(doubted(400));
    EXPECT_FALSE(doubted(512));
    EXPECT_TRUE(doubted(576)) << "45 mm high, 40 of it in the foam";
}

TEST(Plan, a_drawer_without_pockets_has_its_foam) {
    job::Job job = testing::worked_job();
    job.drawers[0].edit([](job::Drawer& drawer) { drawer.pockets.clear(); });
    const Plan plan = compute(job);
    ASSERT_TRUE(plan.drawers[0].dose);
    EXPECT_NEAR(plan.drawers[0].cavity->net_mm3, 10368000, 1);
    EXPECT_TRUE(has(plan.checks, layout::Code::not_placed));
}

TEST(Plan, that_no_cup_was_cast_is_said_once_for_all_drawers) {
    const job::Job one = testing::worked_job();
    job::Drawer second = *one.drawers[0];
    second.id = "d2", second.pockets.clear();
    const Plan plan = compute(job::with_drawer(one, second));
    ASSERT_EQ(plan.drawers.size(), 2u);
    EXPECT_TRUE(has(plan.checks, layout::Code::no_cup));
    for (const DrawerPlan& drawer : plan.drawers) EXPECT_FALSE(has(drawer.checks, layout::Code::no_cup));
}

TEST(Plan, an_insert_cut_in_two_says_so_and_has_no_figures) {
    job::Job job = testing::worked_job();
    job.drawers[0].edit([](job::Drawer& drawer) {
        drawer.obstructions.push_back({shape::Rectangle{20, 400, 0}, {{240, 180}, 0}, {}});
    });
    const Plan plan = compute(job);
    EXPECT_FALSE(plan.drawers[0].insert);
    EXPECT_FALSE(plan.drawers[0].dose);
    EXPECT_FALSE(plan.purchase);
    EXPECT_TRUE(has(plan.drawers[0].checks, layout::Code::insert_split));
    EXPECT_EQ(figures_json(job, plan, "test").find("\"foam\""), std::string::npos); // absent, never 0
}

TEST(Plan, every_code_has_words) {
    job::Job job = testing::worked_job();
    for (const layout::Code code : layout::all_codes()) {
        layout::Check check;
        check.code = code;
        check.subjects = {"R1#1", "gone#2"};
        check.value = 1;
        check.limit = 2;
        for (const auto units :
             {job::DisplayUnits::mm, job::DisplayUnits::inch, job::DisplayUnits::inch_32}) {
            job.display_units = units;
            EXPECT_GT(english(title(check, job)).size(), 5u) << text_of(code);
            EXPECT_GT(english(advice(check, job)).size(), 5u) << text_of(code);
            EXPECT_EQ(english(sentence(check, job)).find('\n'), std::string::npos) << text_of(code);
        }
    }
    EXPECT_EQ(subject_name("gone#2", job), "gone#2");
}

TEST(JsonText, shows_no_noise_around_nothing) {
    JsonText json;
    json.begin_object();
    json.amount("blocks_mm3", -3e-7);
    json.amount("fillet_mm3", 12.5);
    json.member("x", -1.1e-11);
    json.member("y", -0.0);
    json.member("z", -2e-9);
    json.end_object();
    EXPECT_EQ(json.take(), "{\n  \"blocks_mm3\": 0,\n  \"fillet_mm3\": 12.5,\n  \"x\": 0,\n  \"y\": 0,\n"
                           "  \"z\": -0.000000002\n}\n");
}

TEST(JsonText, nests_and_quotes) {
    JsonText json;
    json.begin_object();
    json.member("a", 0.1 + 0.2);
    json.key("b");
    json.begin_array();
    json.text("x\"\n\\");
    json.boolean(true);
    json.end_array();
    json.key("c");
    json.begin_array();
    json.end_array();
    json.end_object();
    EXPECT_EQ(json.take(),
              "{\n  \"a\": 0.3,\n  \"b\": [\n    \"x\\\"\\n\\\\\",\n    true\n  ],\n  \"c\": []\n}\n");
}

} // namespace
} // namespace drawercast::plan
