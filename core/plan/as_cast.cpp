// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/as_cast.h"

#include "job/ranges.h"
#include "plan/as_built.h"
#include "plan/foam_in_mold.h"
#include "plan/pour_steps.h"

#include <cmath>

namespace drawercast::plan {

namespace {

/// What the drawer's mold held: as it was measured last, else as planned.
std::optional<casting::Cavity> cavity_cast_in(const job::Job& job, const DrawerPlan& drawer) {
    if (const auto* measured = last_built(job, drawer.id))
        if (const auto built = built_figures(job, drawer, *measured)) return built->cavity;
    return drawer.cavity;
}

double mean_of(const std::vector<double>& values) {
    double sum = 0;
    for (const double value : values) sum += value;
    return sum / static_cast<double>(values.size());
}

/// As spread_of(), but nothing where a job may not hold the mean.
std::optional<Spread> spread_within(const std::vector<double>& values, std::string_view path) {
    const auto spread = spread_of(values);
    if (!spread) return std::nullopt;
    const job::Range& range = job::range_of(path);
    const bool above = range.open_least ? spread->mean > range.least : spread->mean >= range.least;
    return above && spread->mean <= range.most ? spread : std::nullopt;
}

double three_digits(double value) {
    const double unit = std::pow(10, std::floor(std::log10(value)) - 2);
    return std::round(value / unit) * unit;
}

/// Of what is mixed, the reserve that is not poured, as the drawer is planned now.
double unpoured_share(const DrawerPlan& drawer) {
    if (!drawer.dose || drawer.dose->mixed_ml <= 0) return 0;
    const casting::Dose& dose = *drawer.dose;
    return (dose.mixed_ml - dose.poured_ml - dose.batches * dose.bucket_left_ml) / dose.mixed_ml;
}

} // namespace

CastFigures cast_figures(const job::Job& job, const DrawerPlan& drawer, const job::Cast& cast) {
    CastFigures figures;
    const auto profile = profile_today(job);
    const double out_g = cast.trimmed_g.value_or(0) + cast.plugs_g.value_or(0);
    if (cast.mixed_g && cast.cast_g) {
        figures.wasted_g = *cast.mixed_g - *cast.cast_g - out_g;
        if (profile && *figures.wasted_g >= 0) {
            // What is mixed for squeeze-out and not poured stays behind too; the next dose adds it anew.
            const double wasted_ml = *figures.wasted_g / profile->liquid_g_ml;
            figures.bucket_left_ml =
                std::max(0.0, wasted_ml - unpoured_share(drawer) * *cast.mixed_g / profile->liquid_g_ml) /
                cast.batches;
        }
    }
    const auto cavity = cavity_cast_in(job, drawer);
    if (cast.cast_g && *cast.cast_g > 0 && cavity && cavity->net_mm3 > 0) {
        if (cast.plugs_g) figures.plugs_ml = *cast.plugs_g / (*cast.cast_g / (cavity->net_mm3 / 1000));
        if (profile) {
            const double liquid_ml = (*cast.cast_g + out_g) / profile->liquid_g_ml;
            const auto pressure =
                pressure_in(job, mold_with(*profile, *job.foam, *cavity, liquid_ml, air_left_ml(drawer)));
            if (pressure) figures.closed_kpa = pressure->closed_kpa;
        }
    }
    if (figures.plugs_ml && *figures.plugs_ml > 0 && cast.plugs_planned_ml && *cast.plugs_planned_ml > 0 &&
        cast.viscosity_pa_s)
        figures.viscosity_pa_s = *cast.viscosity_pa_s * *cast.plugs_planned_ml / *figures.plugs_ml;
    if (cast.bar_mm && cast.bar_cured_mm) figures.shrinkage = 1 - *cast.bar_cured_mm / *cast.bar_mm;
    std::vector<double> wider;
    for (const auto& fit : cast.fits) wider.push_back(fit.wider_mm);
    if (!wider.empty()) figures.wider_mm = mean_of(wider);
    return figures;
}

std::optional<Spread> spread_of(const std::vector<double>& values) {
    if (values.empty()) return std::nullopt;
    Spread spread{static_cast<int>(values.size()), mean_of(values), 0};
    double squares = 0;
    for (const double value : values) squares += (value - spread.mean) * (value - spread.mean);
    if (values.size() > 1) spread.deviation = std::sqrt(squares / static_cast<double>(values.size() - 1));
    return spread;
}

Calibration calibration_of(const job::Job& job, const Plan& plan) {
    std::vector<double> left, viscosity, shrinkage, wider;
    const auto keep = [](std::vector<double>& all, const std::optional<double>& value) {
        if (value) all.push_back(*value);
    };
    for (const job::Cast& cast : job.casts) {
        if (cast.foam != job.foam->name) continue;
        const DrawerPlan* drawer = find_drawer(plan, cast.drawer);
        const CastFigures figures = cast_figures(job, drawer == nullptr ? DrawerPlan{} : *drawer, cast);
        keep(left, figures.bucket_left_ml);
        keep(viscosity, figures.viscosity_pa_s);
        keep(shrinkage, figures.shrinkage);
        keep(wider, figures.wider_mm);
    }
    return {spread_within(left, "/shop/bucket_left_ml"), spread_within(viscosity, "/foam/viscosity_pa_s"),
            spread_within(shrinkage, "/foam/shrinkage"), spread_of(wider)};
}

job::Job with_calibration(job::Job job, const Calibration& calibration, const Wanted& wanted) {
    if (wanted.bucket_left && calibration.bucket_left_ml)
        job.shop.edit(
            [&](job::Shop& shop) { shop.bucket_left_ml = std::round(calibration.bucket_left_ml->mean); });
    if (wanted.viscosity && calibration.viscosity_pa_s)
        job.foam.edit(
            [&](job::Foam& foam) { foam.viscosity_pa_s = three_digits(calibration.viscosity_pa_s->mean); });
    if (wanted.shrinkage && calibration.shrinkage)
        job.foam.edit(
            [&](job::Foam& foam) { foam.shrinkage = std::round(calibration.shrinkage->mean * 1e5) / 1e5; });
    return job;
}

job::Cast blank_cast(const job::Job& job, const DrawerPlan& drawer, const std::string& day) {
    job::Cast cast;
    cast.drawer = drawer.id;
    cast.foam = job.foam->name;
    cast.day = day;
    if (const auto dose = dose_to_pour(job, drawer)) cast.batches = dose->batches;
    if (drawer.air) {
        cast.plugs_planned_ml = drawer.air->squeeze.out_ml;
        cast.viscosity_pa_s = job.foam->viscosity_pa_s;
    }
    return cast;
}

MoldLog mold_log(const std::vector<job::Cast>& casts, const std::string& drawer) {
    MoldLog log;
    for (const job::Cast& cast : casts) {
        if (cast.drawer != drawer) continue;
        ++log.casts;
        log.wax_g += cast.wax_g.value_or(0);
        log.clay_g += cast.clay_g.value_or(0);
        log.on_these_holes = cast.new_holes ? 1 : log.on_these_holes + 1;
    }
    return log;
}

} // namespace drawercast::plan
