// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/air_stage.h"

#include "core/plan/sample_job.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>

namespace drawercast::plan {
namespace {

constexpr double plate_mm = 16;

job::Job with_vents(std::optional<job::Vents> vents) {
    job::Job job = testing::worked_job();
    job::Drawer drawer = *job.drawers.front();
    drawer.vents = std::move(vents);
    job.drawers.front() = drawer;
    return job;
}

DrawerPlan worked_out(const job::Job& job, AirStage& stage) {
    DrawerPlan plan = compute(job).drawers.front();
    EXPECT_TRUE(stage.map(job, *job.drawers.front(), plan, never_stop));
    EXPECT_TRUE(stage.vent(job, *job.drawers.front(), {}, plate_mm, plan, never_stop));
    return plan;
}

bool says(const DrawerPlan& plan, layout::Code code) {
    return std::any_of(plan.checks.begin(), plan.checks.end(),
                       [&](const layout::Check& check) { return check.code == code; });
}

TEST(AirStage, vents_that_place_themselves_leave_the_pressure_as_it_was) {
    AirStage stage;
    const job::Job job = with_vents(std::nullopt);
    const double bare = compute(job).drawers.front().pressure->closed_kpa;
    const DrawerPlan plan = worked_out(job, stage);
    ASSERT_TRUE(plan.air);
    EXPECT_EQ(plan.air->model->map().pockets.size(), 6u); // one over each block
    EXPECT_GE(plan.pressure->closed_kpa, bare);
    EXPECT_LT(plan.pressure->closed_kpa, bare + 0.5);
    EXPECT_FALSE(says(plan, layout::Code::air_pocket_unvented));
}

TEST(AirStage, of_vents_along_the_edge_only_raises_the_closed_pressure) {
    AirStage stage;
    job::Vents edge;
    edge.keep = {{{20, 20}, 3, {}}, {{460, 20}, 3, {}}, {{20, 340}, 3, {}}, {{460, 340}, 3, {}}};
    edge.rest_auto = false;
    const job::Job job = with_vents(edge);
    const double bare = compute(job).drawers.front().pressure->closed_kpa;
    const DrawerPlan plan = worked_out(job, stage);
    EXPECT_GT(plan.air->vented.air_ml, 500);
    EXPECT_GT(plan.pressure->closed_kpa, bare + 5);
    EXPECT_TRUE(says(plan, layout::Code::air_pocket_unvented));
    std::vector<shape::Vec> places;
    EXPECT_TRUE(add_unvented(*plan.air, places));
    EXPECT_LE(places.size(), plan.air->model->map().pockets.size());
    EXPECT_FALSE(add_unvented(*plan.air, places));
}

TEST(AirStage, vents_and_pours_set_where_no_foam_is_must_be_mended) {
    job::Vents kept;
    kept.keep = {{{500, 20}, 3, {}}}; // the drawer is 480 wide
    job::Job job = with_vents(kept);
    AirStage stage;
    EXPECT_TRUE(says(worked_out(job, stage), layout::Code::vent_outside));
    kept.keep[0].at = {460, 20};
    job = with_vents(kept);
    EXPECT_FALSE(says(worked_out(job, stage), layout::Code::vent_outside));
    job::Drawer drawer = *job.drawers.front();
    drawer.pours = {{{240, 240}, 20}};
    job.drawers.front() = drawer;
    EXPECT_FALSE(says(worked_out(job, stage), layout::Code::pour_outside));
    drawer.pours = {{{240, 400}, 20}};
    job.drawers.front() = drawer;
    EXPECT_TRUE(says(worked_out(job, stage), layout::Code::pour_outside));
}

TEST(AirStage, more_set_by_hand_than_is_poured_is_said) {
    job::Job job = with_vents(std::nullopt);
    const double poured_ml = compute(job).drawers.front().dose->poured_ml;
    job::Drawer drawer = *job.drawers.front();
    for (const double share : {0.5, 0.6}) { // the first alone is no fault
        drawer.pours.push_back({{240, 240}, share * poured_ml});
        job.drawers.front() = drawer;
        AirStage stage;
        EXPECT_EQ(says(worked_out(job, stage), layout::Code::pours_over), drawer.pours.size() == 2);
    }
}

TEST(AirStage, does_not_depend_on_what_was_asked_before) {
    AirStage warm;
    job::Vents none;
    none.rest_auto = false;
    (void)worked_out(with_vents(none), warm);
    AirStage cold;
    const job::Job job = with_vents(std::nullopt);
    const DrawerPlan a = worked_out(job, warm);
    const DrawerPlan b = worked_out(job, cold);
    EXPECT_TRUE(air::same(*a.air, *b.air));
    EXPECT_EQ(a.pressure, b.pressure);
}

TEST(AirStage, stops_when_asked) {
    AirStage stage;
    const job::Job job = with_vents(std::nullopt);
    DrawerPlan plan = compute(job).drawers.front();
    EXPECT_FALSE(stage.map(job, *job.drawers.front(), plan, [](double) { return true; }));
}

TEST(AirStage, the_makers_vents_are_mirrored_into_the_mold) {
    AirStage stage;
    job::Vents one;
    one.keep = {{{100, 300}, 4, {}}};
    one.rest_auto = false;
    const DrawerPlan plan = worked_out(with_vents(one), stage);
    ASSERT_EQ(plan.air->vented.vents.size(), 1u);
    EXPECT_NEAR(plan.air->vented.vents[0].at.x, 380, 1e-9);
    EXPECT_NEAR(plan.air->vented.vents[0].at.y, 300, 1e-9);
}

TEST(AirStage, a_vent_being_tried_is_sketched_as_it_comes_out) {
    AirStage stage;
    const DrawerPlan last = worked_out(with_vents(std::nullopt), stage);
    job::Vents one;
    one.keep = {{{100, 300}, 3, {}}, {{300, 80}, 3, {}}};
    const job::Job job = with_vents(one);
    const auto tried = air_tried(job, *job.drawers.front(), last, *last.air);
    const DrawerPlan whole = worked_out(job, stage);
    EXPECT_EQ(tried->vents_in, whole.air->vents_in);
    ASSERT_GE(tried->vented.vents.size(), 2u);
    EXPECT_EQ(tried->vented.vents[0], whole.air->vented.vents[0]);
    ASSERT_EQ(tried->vented.shares_ml.size(), whole.air->vented.shares_ml.size());
    for (std::size_t i = 0; i < tried->vented.shares_ml.size(); ++i)
        EXPECT_EQ(tried->vented.shares_ml[i] > air::vented_ml,
                  whole.air->vented.shares_ml[i] > air::vented_ml);
}

TEST(AirStage, the_last_place_of_one_solve_is_the_last_pocket_of_the_map) {
    AirStage stage;
    const job::Job job = with_vents(std::nullopt);
    const DrawerPlan plan = worked_out(job, stage);
    const auto last = last_air(job, *job.drawers.front(), plan);
    ASSERT_TRUE(last);
    const shape::MoldMap map(plan.insert->box, job.foam->shrinkage);
    const auto& pockets = plan.air->model->map().pockets;
    constexpr double near_mm = 6; // as places are asked for
    EXPECT_LT(shape::length(map.to_mold(*last).vec() - pockets.back().at), near_mm);
}

} // namespace
} // namespace drawercast::plan
