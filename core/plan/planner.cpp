// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planner.h"

#include "casting/kits.h"
#include "casting/profile.h"
#include "layout/checks.h"
#include "layout/left_as_is.h"
#include "plan/drawer_stage.h"
#include "plan/object_table.h"

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <utility>

namespace drawercast::plan {

struct Planner::Memory {
    ObjectTable objects;
    std::map<std::string, DrawerStage> drawers; ///< by id
    std::optional<casting::PurchaseIn> purchase_in;
    casting::Purchase purchase;
};

Planner::Planner() : memory_(std::make_unique<Memory>()) {}
Planner::~Planner() = default;
Planner::Planner(Planner&&) noexcept = default;
Planner& Planner::operator=(Planner&&) noexcept = default;

namespace {

/// Liquid over all drawers; nothing while a drawer has no dose.
std::optional<double> mixed_of_all(const std::vector<DrawerPlan>& drawers) {
    if (drawers.empty()) return std::nullopt;
    double sum = 0;
    for (const auto& drawer : drawers) {
        if (!drawer.dose) return std::nullopt;
        sum += drawer.dose->mixed_ml;
    }
    return sum;
}

std::vector<layout::Check> job_checks(const job::Job& job) {
    std::vector<layout::Check> checks;
    layout::add_not_placed(job, checks);
    std::sort(checks.begin(), checks.end(), layout::comes_before);
    layout::mark_left_as_is(checks, job.left_as_is, "");
    return checks;
}

} // namespace

Plan Planner::fast(const job::Job& job) {
    Plan plan;
    memory_->objects.update(job.objects, job.foam->firmness);
    const auto profile = casting::profile_of({job.foam, job.shop->temperature_c, job.shop->altitude_m});
    const Setting setting{job, memory_->objects, profile};

    std::map<std::string, DrawerStage> kept; // drawers no longer in the job are forgotten
    plan.drawers.reserve(job.drawers.size());
    for (const auto& drawer : job.drawers) {
        auto stage = memory_->drawers.extract(drawer->id);
        const auto at = stage ? kept.insert(std::move(stage)).position : kept.try_emplace(drawer->id).first;
        plan.drawers.push_back(at->second.update(*drawer, setting));
    }
    memory_->drawers = std::move(kept);

    if (const auto mixed = mixed_of_all(plan.drawers)) {
        for (const auto& drawer : plan.drawers)
            plan.a_ml += drawer.dose->a_ml, plan.b_ml += drawer.dose->b_ml;
        if (!job.foam->kits.empty()) {
            casting::PurchaseIn in{*mixed, job.foam->kits};
            if (memory_->purchase_in != in) {
                memory_->purchase = casting::purchase_of(in);
                memory_->purchase_in = std::move(in);
            }
            plan.purchase = memory_->purchase;
        }
    }
    plan.checks = job_checks(job);
    return plan;
}

} // namespace drawercast::plan
