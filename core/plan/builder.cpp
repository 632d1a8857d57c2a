// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/builder.h"

#include "base/demand.h"
#include "layout/left_as_is.h"
#include "plan/air_stage.h"
#include "plan/plate_stage.h"
#include "plan/stock_checks.h"
#include "plan/stock_stage.h"

#include <algorithm>
#include <map>
#include <string>
#include <utility>

namespace drawercast::plan {

/// What is worth remembering of each drawer, by its id.
struct Builder::Memory {
    std::map<std::string, AirStage> air;
    std::map<std::string, PlateStage> plate;
};

Builder::Builder() : memory_(std::make_unique<Memory>()) {}
Builder::~Builder() = default;
Builder::Builder(Builder&&) noexcept = default;
Builder& Builder::operator=(Builder&&) noexcept = default;

namespace {

void tidy_checks(const job::Job& job, DrawerPlan& plan) {
    std::stable_sort(plan.checks.begin(), plan.checks.end(), layout::comes_before);
    layout::mark_left_as_is(plan.checks, job.left_as_is, plan.id);
}

} // namespace

std::optional<Plan> Builder::build(const job::Job& job, Plan quick, const Watch& watch) {
    const double drawers = static_cast<double>(quick.drawers.size());
    for (std::size_t i = 0; i < quick.drawers.size(); ++i) {
        const Watch of_drawer = [&](double done) { return watch((static_cast<double>(i) + done) / drawers); };
        if (of_drawer(0)) return std::nullopt;
        // Stages of one drawer, in this order: air, plate, vents. Each puts its part and its checks into
        // quick.drawers[i].
        DrawerPlan& plan = quick.drawers[i];
        const job::Drawer& drawer = *job.drawers[i];
        AirStage& air = memory_->air[plan.id];
        if (!air.map(job, drawer, plan, of_drawer)) return std::nullopt;
        PlateStage& plate = memory_->plate[plan.id];
        if (!plate.design(job, plan, of_drawer)) return std::nullopt;
        if (!plan.plate) continue; // no dose: then no air stays either
        const mold::PlateDesign& design = plan.plate->answer.design;
        if (!air.vent(job, drawer, clear_of(design), design.board.thickness_mm, plan, of_drawer))
            return std::nullopt;
        plate.check(job, plan);
    }
    quick.stock = std::make_shared<const StockPlan>(stock_of(job, quick));
    for (DrawerPlan& plan : quick.drawers) {
        const auto more = stock_checks(*quick.stock, plan.id);
        plan.checks.insert(plan.checks.end(), more.begin(), more.end());
        tidy_checks(job, plan);
    }
    const auto gone = [&](const auto& known) {
        return std::none_of(quick.drawers.begin(), quick.drawers.end(),
                            [&](const DrawerPlan& plan) { return plan.id == known.first; });
    };
    std::erase_if(memory_->air, gone);
    std::erase_if(memory_->plate, gone);
    if (watch(1)) return std::nullopt;
    return quick;
}

Plan whole(const job::Job& job) {
    auto plan = Builder().build(job, compute(job), never_stop);
    DRAWERCAST_DEMAND(plan.has_value(), "nobody asked to stop");
    return std::move(*plan);
}

} // namespace drawercast::plan
