// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/run_sheet.h"

#include "plan/say.h"
#include "runsheet/steps.h"

namespace drawercast::plan {

namespace {

constexpr double mm2_per_m2 = 1e6;

std::vector<std::string> pour_materials(const casting::Dose& dose, job::DisplayUnits units) {
    std::vector<std::string> lines{"part A " + say_mass_g(dose.a_g, units),
                                   "part B " + say_mass_g(dose.b_g, units)};
    if (dose.pigment_ml > 0) lines.push_back("pigment " + say_volume_ml(dose.pigment_ml, units));
    return lines;
}

runsheet::DrawerWork work_of(const job::Job& job, const DrawerPlan& plan, const std::string& name) {
    runsheet::DrawerWork work;
    work.id = plan.id;
    work.name = name;
    if (const auto board = pattern_board(job, plan)) work.blocks = static_cast<int>(board->blocks.size());
    if (plan.air) work.vents = static_cast<int>(plan.air->vented.vents.size());
    if (plan.figures) work.insert_m2 = plan.figures->area_mm2 / mm2_per_m2;
    if (plan.times) work.demold_min = plan.times->demold_min;
    work.batches = plan.dose->batches;
    work.crush = job.foam->crush;
    work.pour_materials = pour_materials(*plan.dose, job.display_units);
    return work;
}

} // namespace

RunSheet run_sheet(const job::Job& job, const Plan& plan) {
    std::vector<runsheet::DrawerWork> drawers;
    for (std::size_t i = 0; i < plan.drawers.size() && i < job.drawers.size(); ++i)
        if (plan.drawers[i].dose) drawers.push_back(work_of(job, plan.drawers[i], job.drawers[i]->name));
    RunSheet sheet;
    sheet.tasks = runsheet::tasks_for(drawers, {job.shop->temperature_c, job.shop->people});
    sheet.schedule = runsheet::schedule(sheet.tasks, {});
    return sheet;
}

std::vector<Weighing> batch_weighings(const casting::Dose& dose) {
    const double batches = dose.batches;
    std::vector<Weighing> all{{"part B", dose.b_g / batches, dose.b_ml / batches}};
    if (dose.pigment_ml > 0) all.push_back({"pigment, stirred into B", 0, dose.pigment_ml / batches});
    all.push_back({"part A", dose.a_g / batches, dose.a_ml / batches});
    return all;
}

} // namespace drawercast::plan
