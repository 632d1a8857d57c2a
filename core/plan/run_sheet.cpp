// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/run_sheet.h"

#include "base/units.h"
#include "plan/pour_steps.h"
#include "plan/say.h"
#include "plan/stock_stage.h"
#include "runsheet/steps.h"
#include "stock/supplies.h"

#include <algorithm>

namespace drawercast::plan {

namespace {

std::vector<Phrase> pour_materials(const casting::Dose& dose, job::DisplayUnits units) {
    std::vector<Phrase> lines{phrase("part A %1", figure(say_mass_g(dose.a_g, units))),
                              phrase("part B %1", figure(say_mass_g(dose.b_g, units)))};
    if (dose.pigment_ml > 0)
        lines.push_back(phrase("pigment %1", figure(say_volume_ml(dose.pigment_ml, units))));
    return lines;
}

runsheet::Materials materials_of(const job::Job& job, const DrawerPlan& plan,
                                 const stock::DrawerStock* stock) {
    constexpr double ml_per_l = 1000, mm3_per_ml = 1000;
    const auto units = job.display_units;
    runsheet::Materials materials;
    materials.pour = pour_materials(dose_to_pour(job, plan).value_or(*plan.dose), units);
    if (plan.cavity && plan.cavity->fillet_mm3 > 0)
        materials.fix = {
            phrase("clay %1", figure(say_volume_ml(plan.cavity->fillet_mm3 / mm3_per_ml, units)))};
    if (stock == nullptr) return materials;
    const auto ml = [&](double liters) { return figure(say_volume_ml(ml_per_l * liters, units)); };
    const double coat_l = stock::sealer_coat_l(stock->sealed_mm2);
    materials.first_coat = {
        phrase("sealer %1", ml(coat_l + stock::end_grain_l(stock->missed.end_grain_mm2)))};
    materials.coat = {phrase("sealer %1", ml(coat_l))};
    materials.release = {phrase("release %1", ml(stock::release_coat_l(stock->sealed_mm2)))};
    return materials;
}

runsheet::DrawerWork work_of(const job::Job& job, const DrawerPlan& plan, const std::string& name,
                             const stock::DrawerStock* stock) {
    runsheet::DrawerWork work;
    work.id = plan.id;
    work.name = name;
    if (stock != nullptr) work.blocks = static_cast<int>(stock->blocks.size());
    work.closures = closure_count(plan);
    if (plan.air) work.vents = static_cast<int>(plan.air->vented.vents.size());
    if (plan.figures) work.insert_m2 = plan.figures->area_mm2 / units::mm2_per_m2;
    if (plan.times) work.demold_min = plan.times->demold_min;
    work.batches = plan.dose->batches;
    work.crush = job.foam->crush;
    work.materials = materials_of(job, plan, stock);
    return work;
}

/// Of a drawer cast before it.
bool takes_walls_over(const Plan& plan, const stock::DrawerStock* stock) {
    if (plan.stock == nullptr || stock == nullptr) return false;
    return std::any_of(stock->parts.begin(), stock->parts.end(), [&](const stock::Part& part) {
        return part.role == stock::Role::wall && !is_cut(*plan.stock, part.label);
    });
}

} // namespace

RunSheet run_sheet(const job::Job& job, const Plan& plan) {
    std::vector<runsheet::DrawerWork> drawers;
    for (std::size_t i = 0; i < plan.drawers.size() && i < job.drawers.size(); ++i) {
        const DrawerPlan& drawer = plan.drawers[i];
        if (!drawer.dose) continue;
        std::optional<stock::DrawerStock> made;
        const auto* stock = find_stock(plan.stock.get(), drawer.id); // there already: unions take their time
        if (stock == nullptr && (made = drawer_stock(job, drawer))) stock = &*made;
        auto work = work_of(job, drawer, job.drawers[i]->name, stock);
        if (!drawers.empty() && takes_walls_over(plan, stock)) work.walls_after = drawers.back().id;
        drawers.push_back(std::move(work));
    }
    RunSheet sheet;
    sheet.tasks = runsheet::tasks_for(
        drawers, {job.shop->temperature_c, job.shop->people, job.display_units != job::DisplayUnits::mm});
    sheet.schedule = in_shop_hours(sheet.tasks, *job.shop);
    return sheet;
}

runsheet::Schedule in_shop_hours(std::vector<runsheet::Task>& tasks, const job::Shop& shop) {
    constexpr double min_a_day = 24 * 60;
    double longest = 0;
    for (auto& task : tasks) {
        task.in_one_go = task.in_one_go && task.hands_min <= min_a_day;
        if (task.in_one_go) longest = std::max(longest, task.hands_min);
    }
    runsheet::Hours hours{shop.opens_h, shop.closes_h};
    if (60 * (hours.closes_h - hours.opens_h) < longest) {
        constexpr double spare_h = 1e-6; // so that no rounding makes it too short again
        hours.closes_h = std::min(24.0, hours.opens_h + longest / 60 + spare_h);
        hours.opens_h = std::max(0.0, std::min(hours.opens_h, hours.closes_h - longest / 60 - spare_h));
    }
    return runsheet::schedule(tasks, hours);
}

} // namespace drawercast::plan
