// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/slots.h"

#include "sample_job.h"

#include <gtest/gtest.h>

using namespace drawercast;

namespace {

/// Two boxes 30 mm deep in a drawer 300 wide, that far apart and the first that far from the edge.
job::Job two_boxes(double wall_mm, double edge_mm) {
    job::Job job = plan::testing::worked_job();
    job::Drawer drawer = *job.drawers[0];
    drawer.outline = shape::Rectangle{300, 200, 0};
    drawer.gap_mm = 0;
    drawer.pockets.clear();
    job.objects.clear();
    job.objects.emplace_back(plan::testing::object("box", shape::Rectangle{80, 80, 0}, 30));
    for (int n = 0; n < 2; ++n)
        drawer.pockets.push_back(
            {"box", n + 1, {{edge_mm + 40 + n * (80 + wall_mm), 100}, 0}, false, {}, {}});
    job.drawers[0] = drawer;
    return job;
}

int slots_in(const job::Job& job) { return plan::narrow_slots(job, plan::compute(job)); }

} // namespace

TEST(NarrowSlots, AreCountedPairByPair) {
    EXPECT_EQ(slots_in(two_boxes(10, 12)), 0);
    EXPECT_EQ(slots_in(two_boxes(9, 12)), 1);
    EXPECT_EQ(slots_in(two_boxes(10, 9)), 1);
    EXPECT_EQ(slots_in(two_boxes(0.5, 0.5)), 2);
}

TEST(NarrowSlots, AreFoundWithinOnePocketUnlessAStepFillsThem) {
    job::Job job = two_boxes(40, 40);
    job::Object bars = plan::testing::object("box", shape::Rectangle{80, 20, 0}, 30);
    job::Level other = bars.levels[0];
    bars.levels[0].pose.at = {0, 11.5};
    other.pose.at = {0, -11.5};
    bars.levels.push_back(other); // two bars, 3 mm apart
    job.objects[0] = bars;
    EXPECT_EQ(slots_in(job), 2) << "one in each of the two pockets";
    job::Level step = other;
    step.form = job::Sunk{shape::Rectangle{80, 20, 0}, 10};
    step.pose.at = {0, 0};
    bars.levels.push_back(step);
    job.objects[0] = bars;
    EXPECT_EQ(slots_in(job), 0);
}
