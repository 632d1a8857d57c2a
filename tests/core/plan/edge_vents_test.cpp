// SPDX-License-Identifier: GPL-3.0-or-later
// The trade's rule, vents along the edges, against vents that follow the air, on the demo drawers: what stays
// in the mold, and what that does to the pressure.
#include "job/store.h"
#include "plan/air_stage.h"

#include "source_dir.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>

namespace drawercast::plan {
namespace {

constexpr double plate_mm = 18;

struct Outcome {
    std::size_t vents = 0;
    long unvented = 0;
    double air_ml = 0;
    double closed_kpa = 0;
};

Outcome outcome(const job::Job& job, const job::Drawer& drawer, DrawerPlan plan, AirStage& stage) {
    EXPECT_TRUE(stage.map(job, drawer, plan, never_stop));
    EXPECT_TRUE(stage.vent(job, drawer, {}, plate_mm, plan, never_stop));
    const auto& vented = plan.air->vented;
    return {vented.vents.size(),
            std::count_if(vented.shares_ml.begin(), vented.shares_ml.end(),
                          [](double ml) { return ml > air::vented_ml; }),
            vented.air_ml, plan.pressure->closed_kpa};
}

/// Corners and walls at the usual pitch, and none over blocks.
job::Drawer vented_along_edges(const job::Job& job, const job::Drawer& drawer, const DrawerPlan& plan) {
    job::Drawer edge = drawer;
    edge.vents = job::Vents{};
    edge.vents->rest_auto = false;
    const shape::Box box = plan.insert->box.grown(-air::vent_inside_mm);
    const auto along = [&](double mm) {
        return std::max(1, static_cast<int>(std::ceil(mm / job.mold.vent_spacing_mm)));
    };
    const int across = along(box.width()), up = along(box.height());
    const auto put = [&](double x, double y) {
        edge.vents->keep.push_back({{x, y}, air::vent_drill_mm, {}});
    };
    for (int i = 0; i <= across; ++i)
        for (const double y : {box.min.y, box.max.y}) put(box.min.x + box.width() * i / across, y);
    for (int i = 1; i < up; ++i)
        for (const double x : {box.min.x, box.max.x}) put(x, box.min.y + box.height() * i / up);
    return edge;
}

TEST(EdgeVents, of_the_demo_drawers_leave_air_that_those_over_it_let_out) {
    const auto job = job::load_job(DRAWERCAST_SOURCE_DIR "/resources/demo/field-service.drawercast.json");
    ASSERT_TRUE(job);
    const Plan plan = compute(*job);
    for (std::size_t i = 0; i < plan.drawers.size(); ++i) {
        AirStage stage;
        const job::Drawer& drawer = *job->drawers[i];
        const Outcome ours = outcome(*job, drawer, plan.drawers[i], stage);
        const Outcome edges =
            outcome(*job, vented_along_edges(*job, drawer, plan.drawers[i]), plan.drawers[i], stage);
        std::cout << drawer.id << ": along edges " << edges.vents << " vents, " << edges.unvented
                  << " places keep " << edges.air_ml << " mL, closed " << edges.closed_kpa << " kPa; ours "
                  << ours.vents << " vents, " << ours.unvented << " places keep " << ours.air_ml
                  << " mL, closed " << ours.closed_kpa << " kPa\n";
        EXPECT_EQ(ours.unvented, 0);
        EXPECT_GT(edges.unvented, 0);
        EXPECT_GT(edges.air_ml, 10 * ours.air_ml);
        EXPECT_GT(edges.closed_kpa, 1.1 * ours.closed_kpa);
    }
}

} // namespace
} // namespace drawercast::plan
