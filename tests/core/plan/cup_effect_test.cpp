// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/cup_effect.h"

#include "core/plan/sample_job.h"

#include <gtest/gtest.h>

namespace drawercast::plan {
namespace {

TEST(CupEffect, is_what_the_plan_says_of_the_same_foam) {
    const auto job = testing::worked_job();
    const Plan plan = compute(job);
    for (const auto& drawer : plan.drawers) {
        const auto effect = effect_of(job, drawer, *job.foam);
        ASSERT_EQ(effect.has_value(), drawer.dose.has_value());
        if (!effect) continue;
        EXPECT_EQ(effect->dose, *drawer.dose);
        EXPECT_EQ(effect->pressure, *drawer.pressure);
    }
}

TEST(CupEffect, a_cup_and_then_none_is_the_same_plan) {
    const auto job = testing::worked_job();
    auto with = job;
    with.foam.edit([](job::Foam& foam) {
        foam.cup = job::Cup{};
        foam.cup->use = true;
        foam.cups = {*foam.cup};
    });
    const Plan cup = compute(with);
    ASSERT_TRUE(cup.drawers[0].dose);
    EXPECT_TRUE(cup.drawers[0].dose->by_cup);
    auto without = with;
    without.foam = by_label(*with.foam);
    EXPECT_TRUE(same(compute(without), compute(job)));
}

/// A cup that shows what the label says lowers what must be built: less is unsure.
TEST(CupEffect, a_cup_that_agrees_with_the_label_needs_less_building) {
    auto job = testing::worked_job();
    job.foam.edit([](job::Foam& foam) { foam.overpack.reset(); });
    auto foam = *job.foam;
    const auto label = effect_of(job, compute(job).drawers[0], foam);
    const double liquid = (foam.ratio_a * foam.density_a_g_ml + foam.ratio_b * foam.density_b_g_ml) /
                          (foam.ratio_a + foam.ratio_b);
    foam.cup = job::Cup{};
    foam.cup->use = true;
    foam.cup->liquid_g = liquid / foam.expansion * 3.14159265358979 / 4 * 80 * 80 * 100 / 1000;
    const auto cup = effect_of(job, compute(job).drawers[0], foam);
    ASSERT_TRUE(label && cup);
    EXPECT_LT(cup->pressure.build_for_kpa, label->pressure.build_for_kpa);
    EXPECT_LT(cup->dose.overpack, label->dose.overpack);
}

} // namespace
} // namespace drawercast::plan
