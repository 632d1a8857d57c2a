// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/pour_log.h"

#include "job/catalog.h"
#include "plan/pour_steps.h"

#include <algorithm>
#include <cmath>

namespace drawercast::plan {

namespace {

bool begins(const job::Mark& mark) {
    return !mark.back && (mark.step == begin_pour || mark.step == begin_rehearsal);
}

double tenths(double s) { return std::round(s * 10) / 10; }

} // namespace

const Done* PourRun::find(std::string_view step) const {
    const auto at = std::find_if(done.begin(), done.end(), [&](const Done& one) { return one.step == step; });
    return at == done.end() ? nullptr : &*at;
}

std::optional<double> PourRun::stopwatch_s(double now_s) const {
    const Done* start = find(clock_step);
    return start ? std::optional(now_s - start->at_s) : std::nullopt;
}

std::optional<PourRun> last_run(const std::vector<job::Mark>& log, std::string_view drawer) {
    std::optional<PourRun> run;
    for (const job::Mark& mark : log) {
        if (mark.drawer != drawer) continue;
        if (begins(mark)) {
            run = PourRun{mark.step == begin_rehearsal, mark.at_s, {}};
        } else if (run && mark.back) {
            const auto at = std::find_if(run->done.rbegin(), run->done.rend(),
                                         [&](const Done& one) { return one.step == mark.step; });
            if (at != run->done.rend()) run->done.erase(std::next(at).base());
        } else if (run) {
            run->done.push_back({mark.step, mark.at_s});
        }
    }
    return run;
}

bool is_running(const PourRun& run, double now_s) {
    const auto since = run.stopwatch_s(now_s);
    return !run.rehearsal && since && *since >= 0 && *since < fresh_s && !run.is_done(last_step);
}

std::string running_drawer(const job::Job& job, double now_s) {
    std::string drawer;
    double begun = 0;
    for (const auto& one : job.drawers) {
        const auto run = last_run(job.log, one->id);
        if (run && is_running(*run, now_s) && run->begun_s >= begun) drawer = one->id, begun = run->begun_s;
    }
    return drawer;
}

job::Job with_mark(job::Job job, const std::string& drawer, std::string_view step, double at_s) {
    job.log.push_back({drawer, std::string(step), at_s});
    return job;
}

job::Job with_last_taken_back(job::Job job, const std::string& drawer, double at_s) {
    const auto run = last_run(job.log, drawer);
    if (!run || run->done.empty()) return job;
    job.log.push_back({drawer, run->done.back().step, at_s, true});
    return job;
}

Rehearsed rehearsed_of(const job::Job& job, const DrawerPlan& drawer) {
    Rehearsed out;
    if (const auto dose = dose_to_pour(job, drawer)) out.batch_ml = dose->poured_ml / dose->batches;
    if (!drawer.plate) return out;
    const auto& design = drawer.plate->answer.design;
    out.closures = closure_count(drawer);
    out.close_s = drawer.plate->closing.close_s;
    out.own_seconds = std::any_of(design.closures.begin(), design.closures.end(), [&](const auto& at) {
        return mold::kind_of(design, at).seconds.has_value();
    });
    return out;
}

job::Shop with_rehearsed_times(job::Shop shop, const PourRun& run, const Rehearsed& of) {
    const auto between = [&](std::string_view from, std::string_view to) -> std::optional<double> {
        const Done *a = run.find(from), *b = run.find(to);
        return a && b && b->at_s > a->at_s ? std::optional(b->at_s - a->at_s) : std::nullopt;
    };
    if (const auto pour = between("mixed", "poured"); pour && of.batch_ml > 0) {
        shop.pour_s.reset(); // another drawer's batch is another amount
        shop.pour_l_s = std::round(of.batch_ml / *pour) / 1000;
    }
    if (const auto plate = between("poured", "plate-on")) shop.set_plate_s = tenths(*plate);
    const auto close = between("plate-on", "closed");
    if (!close || of.closures == 0 || of.close_s <= 0) return shop;
    shop.seconds_per_closure = tenths(shop.seconds_per_closure * *close / of.close_s);
    if (!of.own_seconds) return shop;
    shop.closures = job::closures_of(shop);
    for (auto& closure : shop.closures)
        if (closure.seconds) closure.seconds = tenths(*closure.seconds * *close / of.close_s);
    return shop;
}

} // namespace drawercast::plan
