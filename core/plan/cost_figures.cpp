// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/cost_figures.h"

#include "plan/as_cast.h"
#include "plan/cost.h"

#include <optional>
#include <string_view>

namespace drawercast::plan {

namespace {

void write_spread(JsonText& json, std::string_view name, const std::optional<Spread>& spread) {
    if (!spread) return;
    json.key(name);
    json.begin_object();
    json.member("casts", spread->count);
    json.member("mean", spread->mean);
    json.member("deviation", spread->deviation);
    json.end_object();
}

} // namespace

void write_casts(JsonText& json, const job::Job& job, const Plan& plan) {
    if (job.casts.empty()) return;
    const Calibration learned = calibration_of(job, plan);
    json.key("as_cast");
    json.begin_object();
    write_spread(json, "bucket_left_ml", learned.bucket_left_ml);
    write_spread(json, "viscosity_pa_s", learned.viscosity_pa_s);
    write_spread(json, "shrinkage", learned.shrinkage);
    write_spread(json, "pocket_wider_mm", learned.wider_mm);
    json.end_object();
}

void write_cost(JsonText& json, const job::Job& job, const Plan& plan) {
    const auto basis = cost_basis(job, plan);
    if (!basis) return;
    const Cost one = cost_of(*basis, 1);
    json.key("cost");
    json.begin_object();
    json.member("foam", one.foam);
    json.member("wood", one.wood);
    json.member("closures", one.closures);
    json.member("supplies", one.supplies);
    json.member("hours", one.hours);
    json.member("hours_each_further", basis->hours.each);
    json.member("work", one.work);
    json.member("margin", one.margin);
    json.member("total", one.total);
    json.member("days", basis->days);
    json.key("run");
    json.begin_array();
    for (const int sets : {2, 5, 10, 20}) {
        const Cost run = cost_of(*basis, sets);
        json.begin_object();
        json.member("sets", sets);
        json.member("total", run.total);
        json.member("each", run.each());
        json.end_object();
    }
    json.end_array();
    json.end_object();
}

} // namespace drawercast::plan
