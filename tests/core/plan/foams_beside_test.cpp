// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/edit.h"
#include "plan/foams_beside.h"

#include <gtest/gtest.h>

namespace drawercast::plan {
namespace {

job::Job two_objects() {
    auto job = job::new_job({400, 300, 90, 60});
    job::Object object;
    object.id = "i1";
    object.name = "Anvil";
    object.mass_g = 2000;
    object.height_mm = 40;
    object.levels = {{job::Sunk{shape::Rectangle{100, 50, 0}, 30}, {}, {}}};
    job = job::with_object(std::move(job), object);
    return job::placed(std::move(job), "d1", "i1", {{200, 150}, 0});
}

TEST(FoamsBeside, the_jobs_own_comes_first_and_only_once) {
    const auto job = two_objects();
    const auto beside = foams_beside(job, job::builtin_foams());
    ASSERT_EQ(beside.size(), job::builtin_foams().size());
    EXPECT_TRUE(beside[0].of_job);
    EXPECT_EQ(beside[0].foam, *job.foam);
    for (std::size_t i = 1; i < beside.size(); ++i) EXPECT_FALSE(beside[i].of_job);
}

TEST(FoamsBeside, each_is_what_the_whole_answer_says_of_that_foam) {
    const auto job = two_objects();
    for (const auto& one : foams_beside(job, job::builtin_foams())) {
        auto other = job;
        other.foam = one.foam;
        const auto plan = compute(other);
        EXPECT_EQ(one.inserts_g, plan.drawers[0].dose->insert_g);
        EXPECT_EQ(one.closed_kpa, plan.drawers[0].pressure->closed_kpa);
        ASSERT_TRUE(one.price && plan.purchase);
        EXPECT_EQ(*one.price, plan.purchase->price);
        // 2 kg on 100 × 50 mm: 19.6133 N / 5000 mm²
        EXPECT_NEAR(one.foot_kpa, 3.92266, 1e-5);
        EXPECT_EQ(one.foot_object, "Anvil");
        EXPECT_EQ(one.foot_most_kpa, one.foam.stress25_kpa / 2);
    }
}

TEST(FoamsBeside, what_can_not_be_worked_out_is_absent) {
    auto job = two_objects();
    auto foam = *job.foam;
    foam.kits.clear();
    job.foam = foam;
    EXPECT_FALSE(foams_beside(job, {})[0].price);
    EXPECT_TRUE(foams_beside(job::Job{}, {})[0].foot_object.empty());
}

} // namespace
} // namespace drawercast::plan
