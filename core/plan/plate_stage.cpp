// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/plate_stage.h"

#include "casting/profile.h"
#include "job/catalog.h"
#include "mold/plate_checks.h"
#include "shape/region.h"

namespace drawercast::plan {

namespace {

/// Blocks as high as the walls, all together; none of them where their union can't be worked out: then the
/// plate is thought to be pushed there too.
shape::Region through_blocks(const DrawerPlan& plan, const shape::MoldMap& map,
                             const shape::Region& opening) {
    std::vector<shape::Region> all;
    for (const auto& pocket : plan.pockets)
        for (const auto& cut : pocket->cuts)
            if (cut.through) all.push_back(shape::region_of(map.to_mold(cut.outline).contour));
    if (all.empty()) return {};
    const auto together = shape::united(all);
    if (!together) return {};
    const auto inside = shape::shared(*together, opening);
    return inside ? *inside : shape::Region{};
}

mold::ClosingIn closing_in(const job::Job& job, const DrawerPlan& plan, const casting::Profile& profile) {
    mold::ClosingIn in;
    in.mold = {profile,
               plan.dose->poured_ml,
               plan.cavity->net_mm3,
               plan.cavity->insert_area_mm2,
               job.foam->mold_hotter_k,
               plan.air ? plan.air->vented.air_ml : 0};
    in.band = *plan.band;
    in.times = *plan.times;
    in.pressure_factor = job.mold.pressure_factor;
    in.height_mm = plan.cavity->height_mm;
    in.plate_on_s = job.foam->mix_s + plan.dose->pour_s + job.shop->set_plate_s;
    in.drivers = job.shop->drivers;
    return in;
}

} // namespace

std::optional<mold::PlateIn> plate_in(const job::Job& job, const DrawerPlan& plan) {
    if (!plan.insert || !plan.dose || !plan.pressure || !plan.band || !plan.times) return std::nullopt;
    const auto profile = casting::profile_of({job.foam, job.shop->temperature_c, job.shop->altitude_m});
    if (!profile) return std::nullopt;
    const shape::MoldMap map(plan.insert->box, job.foam->shrinkage);
    mold::PlateIn in;
    in.width_mm = map.length_to_mold(plan.insert->box.width());
    in.depth_mm = map.length_to_mold(plan.insert->box.height());
    in.height_mm = plan.cavity->height_mm;
    in.opening = map.to_mold(plan.insert->area).region;
    in.through = through_blocks(plan, map, in.opening);
    in.load = {plan.pressure->closed_kpa, plan.pressure->build_for_kpa};
    in.closing = closing_in(job, plan, *profile);
    in.gasket = job.mold.gasket;
    in.seconds_per_closure = job.shop->seconds_per_closure;
    in.boards = job::boards_of(*job.shop);
    in.stiffeners = job::stiffeners_of(*job.shop);
    in.closures = job::closures_of(*job.shop);
    in.board = job.mold.board;
    in.box_board = job.mold.box_board;
    in.closure = job.mold.closure;
    in.stiffening = job.mold.stiffeners;
    in.spacing_mm = job.mold.spacing_mm;
    return in;
}

air::KeptClear clear_of(const mold::PlateDesign& design) {
    air::KeptClear out;
    for (const auto& closure : design.closures)
        out.holes.push_back({closure.at.vec(), mold::kind_of(design, closure).diameter_mm / 2});
    for (const auto& stiffener : design.stiffeners)
        out.strips.push_back({stiffener.from.vec(), stiffener.to.vec(), design.stiffener->width_mm / 2});
    return out;
}

bool PlateStage::design(const job::Job& job, DrawerPlan& plan, const Watch& watch) {
    auto in = plate_in(job, plan);
    if (!in) {
        designed_in_.reset();
        return true;
    }
    if (designed_in_ != in) {
        designed_in_.reset();
        auto plate = mold::plate_of(*in, [&] { return watch(0.4); });
        if (!plate) return false;
        designed_ = std::make_shared<const mold::Plate>(std::move(*plate));
        designed_in_ = std::move(in);
    }
    plan.plate = designed_;
    return true;
}

void PlateStage::check(const job::Job& job, DrawerPlan& plan) {
    if (!plan.plate) return;
    auto in = plate_in(job, plan);
    if (designed_in_ == in) {
        checked_ = designed_;
    } else if (checked_in_ != in || checked_->answer.design != designed_->answer.design) {
        auto plate = mold::rechecked(*in, designed_->answer.design);
        plate.answer.runner_up = designed_->answer.runner_up;
        checked_ = std::make_shared<const mold::Plate>(std::move(plate));
    }
    checked_in_ = std::move(in);
    plan.plate = checked_;
    const auto checks = mold::plate_checks(*checked_in_, *checked_);
    plan.checks.insert(plan.checks.end(), checks.begin(), checks.end());
}

} // namespace drawercast::plan
