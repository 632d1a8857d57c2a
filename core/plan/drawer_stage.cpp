// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/drawer_stage.h"

#include "casting/band.h"
#include "casting/checks.h"
#include "casting/dose.h"
#include "casting/pressure.h"
#include "casting/times.h"
#include "layout/checks.h"
#include "layout/left_as_is.h"
#include "plan/foam_in_mold.h"
#include "shape/enlargement.h"

#include <algorithm>
#include <utility>

namespace drawercast::plan {

namespace {

using layout::Check;

void add(std::vector<Check>& checks, const std::vector<Check>& more) {
    checks.insert(checks.end(), more.begin(), more.end());
}

InsertFigures figures_of(const layout::Insert& insert, const casting::Cavity& cavity, double shrinkage) {
    const double keeps = 1 - shrinkage; // of each length
    return {insert.area_mm2, insert.thickness_mm, cavity.net_mm3 * keeps * keeps * keeps};
}

/// Dose, band, pressure and times of a mold, and what must be said of them.
void add_foam(DrawerPlan& plan, const Setting& setting, const casting::CavityMemory& mold) {
    const job::Job& job = setting.job;
    if (!setting.profile) {
        plan.checks.push_back(layout::check_of(setting.profile.error(), {}));
        return;
    }
    const casting::Profile& profile = *setting.profile;
    const auto dose =
        casting::dose_of({profile, job.foam, job.shop, plan.cavity->net_mm3, plan.cavity->insert_area_mm2});
    if (!dose) {
        plan.checks.push_back(casting::dose_refused_check(plan.cavity->net_mm3));
        return;
    }
    const auto in = mold_with(profile, *job.foam, *plan.cavity, dose->poured_ml, 0); // air: not known yet
    plan.dose = *dose;
    plan.band = casting::band_of(in);
    plan.pressure = casting::pressure_of({in, *plan.band, job.mold.pressure_factor});
    plan.times = casting::times_of({profile, dose->poured_ml, dose->pour_s, plan.cavity->net_mm3,
                                    plan.cavity->height_mm, mold.liquid_level_mm(dose->poured_ml)});
    add(plan.checks, casting::dose_checks(
                         {in, *plan.dose, *plan.band, *plan.times, job.shop->altitude_m, job.shop->people}));
}

} // namespace

void DrawerStage::update_insert(const job::Drawer& drawer, double gap_mm) {
    InsertIn in{drawer.outline, drawer.obstructions, drawer.insert_mm, gap_mm};
    if (insert_in_ == in) return;
    auto made = layout::insert_of(drawer, gap_mm);
    insert_ = made ? std::make_shared<const layout::Insert>(std::move(*made)) : nullptr;
    insert_problem_ = made ? std::nullopt : std::optional(made.error());
    insert_in_ = std::move(in);
}

casting::Cavity DrawerStage::update_cavity(const job::Job& job) {
    const casting::CavityIn in{insert_, job.mold.fillet_mm, shape::enlargement_for(job.foam->shrinkage),
                               pockets_.bodies()};
    return cavity_.update(in);
}

DrawerPlan DrawerStage::update(const job::Drawer& drawer, const Setting& setting) {
    const job::Job& job = setting.job;
    DrawerPlan plan;
    plan.id = drawer.id;
    update_insert(drawer, layout::gap_of(drawer, job.foam->firmness));
    pockets_.update(drawer.pockets, setting.objects, drawer.insert_mm);
    plan.insert = insert_;
    plan.pockets.reserve(pockets_.standing().size());
    for (const auto& standing : pockets_.standing()) plan.pockets.push_back(standing.pocket);

    plan.checks = layout_.update(layout::limits_of(job, drawer, insert_), pockets_.standing());
    add(plan.checks, pockets_.checks());
    if (insert_problem_) plan.checks.push_back(layout::check_of(*insert_problem_, {}));
    if (insert_) {
        plan.cavity = update_cavity(job);
        plan.figures = figures_of(*insert_, *plan.cavity, job.foam->shrinkage);
        add_foam(plan, setting, cavity_);
    }
    std::stable_sort(plan.checks.begin(), plan.checks.end(), layout::comes_before);
    layout::mark_left_as_is(plan.checks, job.left_as_is, drawer.id);
    return plan;
}

} // namespace drawercast::plan
