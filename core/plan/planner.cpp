// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/planner.h"

#include "base/side_by_side.h"
#include "casting/checks.h"
#include "casting/kits.h"
#include "casting/profile.h"
#include "layout/checks.h"
#include "layout/left_as_is.h"
#include "plan/drawer_stage.h"
#include "plan/foam_in_mold.h"
#include "plan/object_table.h"

#include <algorithm>
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

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

std::vector<layout::Check> job_checks(const job::Job& job, const Plan& plan,
                                      const Expected<casting::Profile>& profile) {
    std::vector<layout::Check> checks;
    layout::add_not_placed(job, checks);
    const bool has_mold = std::any_of(plan.drawers.begin(), plan.drawers.end(),
                                      [](const DrawerPlan& drawer) { return drawer.cavity.has_value(); });
    if (profile && has_mold)
        for (auto& check : casting::foam_checks(*profile)) checks.push_back(std::move(check));
    std::sort(checks.begin(), checks.end(), layout::comes_before);
    layout::mark_left_as_is(checks, job.left_as_is, "");
    return checks;
}

} // namespace

Plan Planner::fast(const job::Job& job) {
    Plan plan;
    memory_->objects.update(job.objects, job.foam->firmness);
    const auto profile = profile_today(job);
    const Setting setting{job, memory_->objects, profile};

    std::map<std::string, DrawerStage> kept; // drawers no longer in the job are forgotten
    std::vector<DrawerStage*> stages;
    std::vector<std::size_t> first_seen;
    for (const auto& drawer : job.drawers) {
        auto known = memory_->drawers.extract(drawer->id);
        if (known) kept.insert(std::move(known));
        const auto [at, is_new] = kept.try_emplace(drawer->id);
        if (is_new) first_seen.push_back(stages.size());
        stages.push_back(&at->second);
    }
    plan.drawers.resize(stages.size());
    const auto answer = [&](std::size_t i) {
        plan.drawers[i] = stages[i]->update(*job.drawers[i], setting);
        stages[i] = nullptr;
    };
    // A job just opened is waited for; one being edited changes in one drawer, and a thread costs more than
    // the others take to find nothing new.
    side_by_side(first_seen.size(), [&](std::size_t n) { answer(first_seen[n]); });
    for (std::size_t i = 0; i < stages.size(); ++i)
        if (stages[i] != nullptr) answer(i);
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
    plan.checks = job_checks(job, plan, profile);
    return plan;
}

} // namespace drawercast::plan
