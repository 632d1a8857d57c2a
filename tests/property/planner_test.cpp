// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planner.h"

#include "core/plan/sample_job.h"
#include "property/scribbler.h"

#include <gtest/gtest.h>

#include <cstdlib>

namespace drawercast::plan {
namespace {

int rounds() { return std::getenv("DRAWERCAST_LONG") != nullptr ? 20000 : 150; }

/// Whatever was asked before, the quick answer is the answer from scratch, bit for bit.
TEST(Planner, fast_equals_compute_whatever_came_before) {
    for (unsigned seed = 1; seed <= 3; ++seed) {
        testing::Scribbler scribbler(seed);
        Planner planner;
        job::Job job = testing::worked_job();
        for (int round = 0; round < rounds(); ++round) {
            scribbler.scribble(job);
            ASSERT_TRUE(same(planner.fast(job), compute(job))) << "seed " << seed << ", edit " << round;
        }
    }
}

TEST(Planner, asking_twice_answers_the_same) {
    Planner planner;
    const auto job = testing::worked_job();
    const auto first = planner.fast(job);
    EXPECT_TRUE(same(first, planner.fast(job)));
}

TEST(Planner, going_back_answers_as_before) {
    Planner planner;
    testing::Scribbler scribbler(7);
    const auto start = testing::worked_job();
    const auto first = planner.fast(start);
    auto job = start;
    for (int round = 0; round < 50; ++round) {
        scribbler.scribble(job);
        planner.fast(job);
    }
    EXPECT_TRUE(same(first, planner.fast(start)));
}

} // namespace
} // namespace drawercast::plan
