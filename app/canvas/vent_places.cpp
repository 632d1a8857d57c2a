// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/vent_places.h"

namespace drawercast::app {

namespace {

shape::MoldMap map_of(const job::Job& job, const plan::DrawerPlan& plan) {
    return {plan.insert->box, job.foam->shrinkage};
}

} // namespace

shape::Vec vent_in_drawer(const job::Job& job, const plan::DrawerPlan& plan, shape::Vec mold) {
    return map_of(job, plan).to_drawer(shape::Point<shape::InMold>::of(mold)).vec();
}

shape::Vec vent_in_mold(const job::Job& job, const plan::DrawerPlan& plan, shape::Vec drawer) {
    return map_of(job, plan).to_mold(shape::Point<shape::InDrawer>::of(drawer)).vec();
}

std::optional<std::size_t> vent_near(const air::Answer& air, shape::Vec mold, double reach_mm) {
    std::optional<std::size_t> nearest;
    double least = reach_mm;
    const auto& vents = air.vented.vents;
    for (std::size_t i = 0; i < vents.size(); ++i)
        if (const double mm = shape::length(vents[i].at - mold); mm <= least) nearest = i, least = mm;
    return nearest;
}

} // namespace drawercast::app
