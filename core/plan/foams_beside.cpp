// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/foams_beside.h"

#include "layout/checks.h"
#include "layout/minimums.h"

#include <algorithm>

namespace drawercast::plan {

namespace {

void count(const std::vector<layout::Check>& checks, FoamBeside& beside) {
    for (const auto& check : checks) {
        if (check.left_as_is) continue;
        beside.mends += check.severity == layout::Severity::mend;
        beside.looks += check.severity == layout::Severity::look;
    }
}

void add_feet(const job::Job& job, FoamBeside& beside) {
    beside.foot_most_kpa = layout::foot_most_kpa(job.foam->stress25_kpa);
    for (const auto& object : job.objects) {
        const double kpa = layout::foot_kpa(layout::facts_of(*object));
        if (kpa <= beside.foot_kpa) continue;
        beside.foot_kpa = kpa;
        beside.foot_object = object->name;
    }
}

FoamBeside answer_for(job::Job job, const job::Foam& foam, bool of_job) {
    job.foam = foam;
    const Plan plan = compute(job);
    FoamBeside beside;
    beside.foam = foam;
    beside.of_job = of_job;
    double depth = 0;
    for (const auto& drawer : plan.drawers) {
        count(drawer.checks, beside);
        for (const auto& pocket : drawer.pockets) depth = std::max(depth, pocket->form->greatest_depth_mm);
        if (drawer.dose) {
            beside.inserts_g += drawer.dose->insert_g;
            beside.mixed_ml += drawer.dose->mixed_ml;
        }
        if (drawer.pressure) beside.closed_kpa = std::max(beside.closed_kpa, drawer.pressure->closed_kpa);
    }
    beside.wall_mm = layout::minimums_of(job.minimums, foam.firmness).wall(depth);
    add_feet(job, beside);
    const bool priced =
        std::any_of(foam.kits.begin(), foam.kits.end(), [](const job::Kit& kit) { return kit.price > 0; });
    if (plan.purchase && priced) beside.price = plan.purchase->price;
    return beside;
}

} // namespace

std::vector<FoamBeside> foams_beside(const job::Job& job, const std::vector<job::Foam>& foams) {
    std::vector<FoamBeside> all{answer_for(job, *job.foam, true)};
    for (const auto& foam : foams)
        if (!(foam == *job.foam)) all.push_back(answer_for(job, foam, false));
    return all;
}

} // namespace drawercast::plan
