// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "plan/as_built.h"
#include "plan/pour_steps.h"
#include "plan/sentences.h"
#include "plan/stock_checks.h"
#include "plan/stock_depths.h"
#include "plan/stock_stage.h"

#include "core/plan/whole_plan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <memory>
#include <utility>

namespace drawercast::plan {
namespace {

/// One drawer 480 × 360, one object 140 × 90, 45 deep.
job::Job one_object() {
    job::Job job = job::new_job({480, 360, 90, 60});
    job.foam.edit([](job::Foam& foam) { foam.shrinkage = 0; });
    job.mold.fillet_mm = 0;
    job::Object object;
    object.id = "i1";
    object.fit_mm = 0;
    object.levels.push_back({job::Sunk{shape::Rectangle{140, 90, 0}, 45}, {}, {}});
    job.objects.emplace_back(object);
    job.drawers[0].edit([](job::Drawer& drawer) {
        drawer.gap_mm = 0;
        job::Pocket pocket;
        pocket.object = "i1", pocket.pose.at = {240, 180};
        drawer.pockets.push_back(pocket);
    });
    return job;
}

TEST(AsBuilt, nothing_measured_is_the_plan) {
    const auto job = one_object();
    const Plan plan = compute(job);
    const auto figures = built_figures(job, plan.drawers[0], {});
    ASSERT_TRUE(figures);
    EXPECT_DOUBLE_EQ(figures->cavity.net_mm3, plan.drawers[0].cavity->net_mm3);
    EXPECT_DOUBLE_EQ(figures->dose->poured_ml, plan.drawers[0].dose->poured_ml);
    EXPECT_DOUBLE_EQ(figures->pressure->closed_kpa, plan.drawers[0].pressure->closed_kpa);
    EXPECT_NEAR(*figures->planned_dose_kpa, figures->pressure->closed_kpa, 1e-9);
}

TEST(AsBuilt, what_is_poured_where_adds_up_to_the_dose_of_the_measured_mold) {
    auto job = one_object();
    job::AsBuilt built;
    built.drawer = job.drawers[0]->id;
    built.walls_mm = {56};
    job.as_built.push_back(built);
    const Plan plan = whole(job);
    const auto dose = dose_to_pour(job, plan.drawers[0]);
    ASSERT_TRUE(dose && plan.drawers[0].air);
    EXPECT_LT(dose->poured_ml, 0.95 * plan.drawers[0].dose->poured_ml);
    double sum = 0;
    for (const auto& step : plan.drawers[0].air->model->map().pour.steps) sum += step.ml;
    EXPECT_NEAR(sum, dose->poured_ml, 1e-6 * dose->poured_ml);
}

TEST(AsBuilt, air_shut_in_pushes_too) {
    const auto job = one_object();
    Plan plan = compute(job);
    const double without = built_figures(job, plan.drawers[0], {})->pressure->closed_kpa;
    air::Answer answer;
    answer.vented.air_ml = 100;
    plan.drawers[0].air = std::make_shared<const air::Answer>(answer);
    const auto figures = built_figures(job, plan.drawers[0], {});
    EXPECT_GT(figures->pressure->closed_kpa, without);
    EXPECT_NEAR(*figures->planned_dose_kpa, figures->pressure->closed_kpa, 1e-9);
}

TEST(AsBuilt, box_walls_and_blocks_as_measured) {
    const auto job = one_object();
    const Plan plan = compute(job);
    job::AsBuilt built;
    built.width_mm = 481, built.depth_mm = 359, built.walls_mm = {60, 61, 60, 61};
    built.blocks = {{job::subject_of(job.drawers[0]->pockets[0]), 1, 44, 1, {}}};
    const auto figures = built_figures(job, plan.drawers[0], built);
    ASSERT_TRUE(figures);
    EXPECT_NEAR(figures->cavity.gross_mm3, 481 * 359 * 60.5, 1e-3);
    EXPECT_NEAR(figures->cavity.blocks_mm3, 142 * 92 * 44, 1e-3);
    EXPECT_NEAR(figures->cavity.net_mm3, 481 * 359 * 60.5 - 142 * 92 * 44, 1e-3);
    // a larger mold takes more, and the plan's dose leaves less pressure in it
    EXPECT_GT(figures->dose->poured_ml, plan.drawers[0].dose->poured_ml);
    EXPECT_LT(*figures->planned_dose_kpa, plan.drawers[0].pressure->closed_kpa);
}

TEST(AsBuilt, a_lying_round_is_as_high_as_it_was_measured_however_wide) {
    auto job = one_object();
    job.objects[0].edit([](job::Object& object) { object.levels[0].form = job::Lying{{{120, 40}}, 10}; });
    const Plan plan = compute(job);
    ASSERT_TRUE(plan.drawers[0].cavity);
    const std::string pocket = job::subject_of(job.drawers[0]->pockets[0]);
    const auto blocks_mm3 = [&](std::optional<double> height_mm, double grown_mm) {
        job::AsBuilt built;
        built.blocks = {{pocket, 1, height_mm, grown_mm, {}}};
        return built_figures(job, plan.drawers[0], built)->cavity.blocks_mm3;
    };
    const double planned_mm = plan.drawers[0].pockets[0]->form->cuts[0].depth_mm;
    // 1 mm wider on each side is 1 mm more of radius; measured as high as planned, the axis is 1 mm lower
    EXPECT_GT(blocks_mm3(std::nullopt, 1), blocks_mm3(planned_mm, 1));
    EXPECT_NEAR(blocks_mm3(planned_mm + 1, 1), blocks_mm3(std::nullopt, 1), 1e-6);
}

TEST(AsBuilt, as_cut_follows_the_saw) {
    auto job = one_object();
    job.shop.edit([](job::Shop& shop) { shop.saw_step_mm = 5; });
    const Plan plan = compute(job);
    const auto stock = drawer_stock(job, plan.drawers[0]);
    ASSERT_TRUE(stock);
    const auto cut = as_cut(job, plan.drawers[0], *stock);
    EXPECT_DOUBLE_EQ(cut.walls_mm.at(0), 60);
    ASSERT_EQ(cut.blocks.size(), 1U);
    const auto figures = built_figures(job, plan.drawers[0], cut);
    ASSERT_TRUE(figures);
    const auto& body = stock->blocks[0].bodies[0];
    EXPECT_NEAR(figures->cavity.blocks_mm3, 140.2 * 90.2 * (body.height_mm + 0.1),
                1.0); // sealed: the film on
}

TEST(Stock, a_whole_job_is_cut_and_bought) {
    const auto job = one_object();
    const StockPlan stock = stock_of(job, compute(job));
    ASSERT_EQ(stock.drawers.size(), 1U);
    EXPECT_EQ(stock.drawers[0].blocks.size(), 1U);
    std::size_t laid = 0;
    for (const auto& cut : stock.cuts.boards)
        for (const auto& piece : cut.pieces) laid += piece.parts.size();
    EXPECT_EQ(laid, stock.parts.size());
    EXPECT_FALSE(stock.tickets.empty());
    EXPECT_GT(stock.price, 0);
    auto priced = job;
    priced.shop.edit([](job::Shop& shop) { shop.supplies = {{job::Supply::sealer, 1, 22, 0, {}}}; });
    EXPECT_DOUBLE_EQ(stock_of(priced, compute(priced)).price, stock.price + 22); // half a liter or so
}

TEST(Stock, vent_holes_are_missed_too_once_they_are_known) {
    const auto job = one_object();
    Plan plan = compute(job);
    EXPECT_FALSE(drawer_stock(job, plan.drawers[0])->missed.vent_holes.has_value());
    air::Answer answer;
    answer.vented.vents.resize(7);
    plan.drawers[0].air = std::make_shared<const air::Answer>(answer);
    EXPECT_EQ(drawer_stock(job, plan.drawers[0])->missed.vent_holes, 7);
}

TEST(Stock, walls_that_are_shared_are_cut_once_and_screwed_with_the_same_screws) {
    auto job = one_object();
    const auto walls_and_screws = [&] {
        const StockPlan stock = stock_of(job, compute(job));
        int screws = 0;
        for (const stock::BuyLine& line : stock.buy)
            if (line.goods == stock::Goods::screw || line.goods == stock::Goods::closure)
                screws += line.needed; // those the shop knows are sold as its closures
        return std::pair(std::count_if(stock.parts.begin(), stock.parts.end(),
                                       [](const auto& part) { return part.role == stock::Role::wall; }),
                         screws);
    };
    const auto [walls_of_one, screws_of_one] = walls_and_screws();
    job.drawers.emplace_back(*job.drawers[0]);
    job.drawers[1].edit([](job::Drawer& drawer) { drawer.id = "d2", drawer.pockets.clear(); });
    EXPECT_EQ(walls_and_screws().first, 8);
    EXPECT_GT(walls_and_screws().second, 1.5 * screws_of_one);
    job.mold.share_walls = true;
    EXPECT_EQ(walls_of_one, 4);
    EXPECT_EQ(walls_and_screws(), std::pair(walls_of_one, screws_of_one));
}

TEST(Stock, parts_longer_than_their_stock_must_be_mended) {
    auto job = one_object();
    EXPECT_TRUE(stock_checks(stock_of(job, compute(job)), job.drawers[0]->id).empty());
    job.shop.edit([](job::Shop& shop) {
        job::Board small;
        small.name = "small", small.sheet_length_mm = 500, small.sheet_width_mm = 500;
        shop.boards = {small};
    });
    const auto checks = stock_checks(stock_of(job, compute(job)), job.drawers[0]->id);
    ASSERT_EQ(checks.size(), 4U); // base, front, back, plate
    EXPECT_EQ(checks[0].code, layout::Code::stock_short);
    EXPECT_EQ(checks[0].severity, layout::Severity::mend);
    EXPECT_DOUBLE_EQ(checks[0].value, 512);
    EXPECT_DOUBLE_EQ(checks[0].limit, 490);
    EXPECT_EQ(english(advice(checks[0], job)),
              "Use longer stock: a joint in plate, stiffener or box is not in the figures and would open");
    layout::Check of_block = checks[0];
    of_block.subjects = {job::subject_of(job.drawers[0]->pockets[0])};
    EXPECT_EQ(english(advice(of_block, job)), "Use longer stock, or join it from two");
}

TEST(Stock, parts_too_narrow_for_a_fence_are_noted) {
    auto job = one_object();
    job.objects[0].edit([](job::Object& object) {
        object.levels[0].form = job::Sunk{shape::Rectangle{140, 12, 0}, 45};
    });
    const auto checks = stock_checks(stock_of(job, compute(job)), job.drawers[0]->id);
    ASSERT_EQ(checks.size(), 1U);
    EXPECT_EQ(checks[0].code, layout::Code::cut_small);
    EXPECT_EQ(checks[0].subjects, std::vector<std::string>{job::subject_of(job.drawers[0]->pockets[0])});
    EXPECT_DOUBLE_EQ(checks[0].value, 12);
}

TEST(Stock, depths_from_boards_need_no_sawing) {
    auto job = one_object();
    job.foam.edit([](job::Foam& foam) { foam.shrinkage = 0.004; });
    job.shop.edit([](job::Shop& shop) {
        job::Board thick, thin;
        thick.name = "a", thick.thickness_mm = 15.8, thin.name = "b", thin.thickness_mm = 12.1,
        thin.at_hand = 1;
        shop.boards = {thick, thin};
    });
    job = with_depths_from_boards(job, compute(job));
    const double depth = std::get<job::Sunk>(job.objects[0]->levels[0].form).depth_mm;
    EXPECT_NEAR(depth, (15.8 + 15.8 + 12.1 + 0.1) * 0.996, 1e-6); // 43.7 is nearer to 45.08 than 47.4
    const auto stock = drawer_stock(job, compute(job).drawers[0]);
    EXPECT_EQ(stock->blocks[0].bodies[0].stack.saw_off_mm, 0);
    EXPECT_NEAR(stock->blocks[0].bodies[0].height_mm, 43.7, 1e-9);
}

TEST(AsBuilt, a_block_made_too_high_counts_where_the_object_was_dunked_too) {
    auto job = one_object();
    job.objects[0].edit([](job::Object& object) { object.volume_ml = 400; });
    const Plan plan = compute(job);
    job::AsBuilt built;
    built.blocks = {{job::subject_of(job.drawers[0]->pockets[0]), 1, 50, 0, {}}};
    const auto figures = built_figures(job, plan.drawers[0], built);
    ASSERT_TRUE(figures);
    EXPECT_NEAR(figures->cavity.blocks_mm3, 400e3 + 140 * 90 * 5, 1e-3);
}

} // namespace
} // namespace drawercast::plan
