// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/air_stage.h"

#include "base/contains.h"
#include "casting/pressure.h"
#include "casting/profile.h"
#include "casting/times.h"
#include "plan/foam_in_mold.h"
#include "plan/pour_steps.h"

#include <cstddef>
#include <utility>

namespace drawercast::plan {
namespace {

shape::Vec to_mold(const shape::MoldMap& map, shape::Vec p) {
    return map.to_mold(shape::Point<shape::InDrawer>::of(p)).vec();
}

bool can_be_mapped(const DrawerPlan& plan) {
    return plan.dose && plan.insert && plan.cavity->net_mm3 > 1000 * plan.dose->poured_ml;
}

air::MapIn map_in(const job::Job& job, const job::Drawer& drawer, const DrawerPlan& plan) {
    air::MapIn in;
    in.floor = floor_of(job, plan);
    in.poured_ml = dose_to_pour(job, plan).value_or(*plan.dose).poured_ml; // what the map tells to pour
    in.full_expansion =
        plan.cavity->net_mm3 / (1000 * plan.dose->poured_ml); // as full, built as planned or not
    const shape::MoldMap map(plan.insert->box, job.foam->shrinkage);
    for (const job::Pour& pour : drawer.pours) in.pours.push_back({to_mold(map, pour.at), pour.ml});
    return in;
}

air::VentsIn vents_in(const job::Job& job, const job::Drawer& drawer, const DrawerPlan& plan,
                      const air::KeptClear& clear) {
    air::VentsIn in;
    in.spacing_mm = job.mold.vent_spacing_mm;
    in.clear = clear;
    if (!drawer.vents) return in;
    const shape::MoldMap map(plan.insert->box, job.foam->shrinkage);
    for (const job::KeptVent& vent : drawer.vents->keep)
        in.kept.push_back({to_mold(map, vent.at), vent.diameter_mm, air::VentFor::kept});
    in.place_rest = drawer.vents->rest_auto;
    return in;
}

casting::BandIn mold_of(const job::Job& job, const DrawerPlan& plan, double air_ml) {
    return mold_with(*profile_today(job), *job.foam, *plan.cavity, plan.dose->poured_ml, air_ml);
}

void shut_in(const job::Job& job, double air_ml, DrawerPlan& plan) {
    const casting::BandIn in = mold_of(job, plan, air_ml);
    plan.band = casting::band_of(in);
    plan.pressure = casting::pressure_of({in, *plan.band, job.mold.pressure_factor});
    plan.times = casting::times_of({in.profile, in.poured_ml, plan.dose->pour_s, in.net_mm3,
                                    plan.cavity->height_mm, plan.times->liquid_level_mm, air_ml});
}

} // namespace

air::Floor floor_of(const job::Job& job, const DrawerPlan& plan) {
    std::vector<const layout::PlacedPocket*> pockets;
    for (const auto& pocket : plan.pockets) pockets.push_back(pocket.get());
    return air::floor_of(*plan.insert, pockets, job.foam->shrinkage);
}

bool AirStage::map(const job::Job& job, const job::Drawer& drawer, DrawerPlan& plan, const Watch& watch) {
    if (!can_be_mapped(plan)) {
        model_.reset();
        return true;
    }
    air::MapIn in = map_in(job, drawer, plan);
    if (!model_ || !(model_->in() == in)) {
        model_ = air::Model::make(std::move(in), watch);
        if (!model_) return false;
    }
    const air::VentsIn vents = vents_in(job, drawer, plan, {});
    if (vents.place_rest) return true;
    const auto vented = model_->vent(vents, watch);
    if (vented) shut_in(job, vented->air_ml, plan);
    return vented.has_value();
}

bool AirStage::vent(const job::Job& job, const job::Drawer& drawer, const air::KeptClear& clear,
                    double plate_mm, DrawerPlan& plan, const Watch& watch) {
    if (!model_) return true;
    auto answer = std::make_shared<air::Answer>();
    answer->model = model_;
    answer->vents_in = vents_in(job, drawer, plan, clear);
    auto vented = model_->vent(answer->vents_in, watch);
    if (!vented) return false;
    answer->vented = std::move(*vented);
    shut_in(job, answer->vented.air_ml, plan);
    answer->squeeze_in = {mold_of(job, plan, answer->vented.air_ml), plate_mm, job.foam->viscosity_pa_s,
                          plan.dose->overpack};
    answer->impulse = air::impulse_of(answer->squeeze_in.mold);
    answer->squeeze = air::squeeze_of(answer->squeeze_in, answer->vented.vents);
    const auto checks = air::air_checks({*answer, job.foam->viscosity_pa_s});
    plan.checks.insert(plan.checks.end(), checks.begin(), checks.end());
    plan.air = std::move(answer);
    return true;
}

std::shared_ptr<const air::Answer> air_tried(const job::Job& job, const job::Drawer& drawer,
                                             const DrawerPlan& plan, const air::Answer& last) {
    auto tried = std::make_shared<air::Answer>(last);
    tried->vents_in = vents_in(job, drawer, plan, last.vents_in.clear);
    tried->vented = last.model->sketch(tried->vents_in);
    tried->squeeze_in.mold.air_ml = tried->vented.air_ml;
    tried->squeeze = air::squeeze_of(tried->squeeze_in, tried->vented.vents);
    return tried;
}

std::optional<shape::Point<shape::InDrawer>> last_air(const job::Job& job, const job::Drawer& drawer,
                                                      const DrawerPlan& plan) {
    if (!can_be_mapped(plan)) return std::nullopt;
    const auto at = air::last_place(map_in(job, drawer, plan));
    if (!at) return std::nullopt;
    const shape::MoldMap map(plan.insert->box, job.foam->shrinkage);
    return map.to_drawer(shape::Point<shape::InMold>::of(*at));
}

bool add_unvented(const air::Answer& air, std::vector<shape::Vec>& places) {
    const std::size_t before = places.size();
    const auto& pockets = air.model->map().pockets;
    for (std::size_t i = 0; i < pockets.size(); ++i) {
        const bool known = contains(places, pockets[i].at);
        if (air.vented.shares_ml[i] > air::vented_ml && !known) places.push_back(pockets[i].at);
    }
    return places.size() > before;
}

} // namespace drawercast::plan
