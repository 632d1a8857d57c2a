// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"
#include "job/edit.h"
#include "plan/mends.h"
#include "plan/plan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace drawercast::plan {

namespace {

using layout::Code;

job::Object tin(const std::string& id, double width, double depth_mm, double height_mm = 40) {
    job::Object object;
    object.id = id;
    object.name = id;
    object.height_mm = height_mm;
    object.levels.push_back({job::Sunk{shape::Rectangle{width, 50, 0}, depth_mm}, {}, {}});
    return object;
}

/// Two tins side by side in the middle of a drawer, `apart` from center to center.
job::Job two_tins(double apart) {
    auto job = job::new_job({});
    job = job::with_object(job, tin("i1", 80, 30));
    job = job::with_object(job, tin("i2", 80, 30));
    const auto drawer = job.drawers.front()->id;
    job = job::placed(job, drawer, "i1", {{200, 180}, 0});
    return job::placed(job, drawer, "i2", {{200 + apart, 180}, 0});
}

const layout::Check* found(const Plan& plan, Code code) {
    const auto& checks = plan.drawers.front().checks;
    const auto at = std::find_if(checks.begin(), checks.end(),
                                 [&](const layout::Check& check) { return check.code == code; });
    return at == checks.end() ? nullptr : &*at;
}

std::vector<Mend> mends_of(const job::Job& job, Code code) {
    const auto plan = compute(job);
    const auto* check = found(plan, code);
    EXPECT_NE(check, nullptr);
    return check == nullptr ? std::vector<Mend>{} : mends_for(job, job.drawers.front()->id, *check);
}

} // namespace

TEST(Mends, a_thin_wall_is_mended_by_what_it_misses) {
    const auto job = two_tins(84);
    const auto plan = compute(job);
    const auto* check = found(plan, Code::wall_thin);
    ASSERT_NE(check, nullptr);
    const auto mends = mends_for(job, job.drawers.front()->id, *check);
    ASSERT_EQ(mends.size(), 2U) << "either tin can give way";
    for (const auto& mend : mends) {
        EXPECT_EQ(mend.kind, Mend::Kind::move);
        EXPECT_NEAR(mend.amount_mm, check->limit - check->value, 0.11) << "straight away from the other";
        EXPECT_EQ(found(compute(mend.job), Code::wall_thin), nullptr);
    }
    EXPECT_NE(mends[0].subject, mends[1].subject);
}

TEST(Mends, one_pocket_over_another_comes_off_it) {
    const auto mends = mends_of(two_tins(30), Code::overlap);
    ASSERT_FALSE(mends.empty());
    EXPECT_TRUE(compute(mends[0].job).drawers.front().checks.empty());
}

TEST(Mends, locked_pockets_stay) {
    const auto job = job::locked(two_tins(84), {"i1#1"}, true);
    const auto mends = mends_of(job, Code::wall_thin);
    ASSERT_EQ(mends.size(), 1U);
    EXPECT_EQ(mends[0].subject, "i2#1");
    EXPECT_TRUE(mends_of(job::locked(job, {"i2#1"}, true), Code::wall_thin).empty());
}

TEST(Mends, a_pocket_outside_comes_in) {
    auto job = job::new_job({});
    job = job::with_object(job, tin("i1", 80, 30));
    job = job::placed(job, job.drawers.front()->id, "i1", {{10, 180}, 0});
    const auto mends = mends_of(job, Code::outside);
    ASSERT_EQ(mends.size(), 1U);
    EXPECT_GT(mends[0].by.x, 0);
    EXPECT_NEAR(mends[0].by.y, 0, 1e-9);
}

TEST(Mends, a_thin_floor_is_mended_both_ways) {
    auto job = job::new_job({});
    job = job::with_object(job, tin("i1", 80, 55, 60));
    job = job::placed(job, job.drawers.front()->id, "i1", {{200, 180}, 0});
    const auto mends = mends_of(job, Code::floor_thin);
    ASSERT_EQ(mends.size(), 2U);
    for (const auto& mend : mends) {
        EXPECT_TRUE(mend.kind == Mend::Kind::shallower || mend.kind == Mend::Kind::thicker_insert);
        EXPECT_DOUBLE_EQ(mend.amount_mm, 7) << "12 mm of floor where 5 are";
        EXPECT_EQ(found(compute(mend.job), Code::floor_thin), nullptr);
    }
}

TEST(Mends, what_stands_too_high_is_sunk_deeper_if_the_floor_allows) {
    const auto job_of = [](double height_mm) {
        auto job = job::new_job({}); // 90 clear, insert 60
        job = job::with_object(job, tin("i1", 80, 30, height_mm));
        return job::placed(job, job.drawers.front()->id, "i1", {{200, 180}, 0});
    };
    const auto mends = mends_of(job_of(65), Code::too_high);
    ASSERT_EQ(mends.size(), 1U);
    EXPECT_EQ(mends[0].kind, Mend::Kind::deeper);
    EXPECT_DOUBLE_EQ(mends[0].amount_mm, 5);
    EXPECT_TRUE(mends_of(job_of(89), Code::too_high).empty()) << "29 mm deeper would go through the floor";
}

TEST(Mends, an_overpack_set_by_hand_goes_back_to_automatic) {
    auto job = two_tins(150);
    job.foam.edit([](job::Foam& foam) { foam.overpack = 0.0; });
    const auto mends = mends_of(job, Code::short_if_low);
    ASSERT_EQ(mends.size(), 1U);
    EXPECT_EQ(mends[0].kind, Mend::Kind::automatic_dose);
}

} // namespace drawercast::plan
