// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/plate_stage.h"

#include "base/demand.h"
#include "casting/profile.h"
#include "job/catalog.h"
#include "mold/base.h"
#include "mold/plate_checks.h"
#include "plan/foam_in_mold.h"
#include "shape/region.h"
#include "stock/screws.h"

namespace drawercast::plan {

namespace {

constexpr double often_asked = 300;    ///< whether to stop, in a usual search
constexpr double vent_rounding_mm = 1; ///< vents are placed on whole millimeters

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

/// How many will be tried isn't known: ever nearer to the end.
mold::Stop stop_of(const Watch& watch) {
    return [&watch, asked = 0]() mutable { return watch(1 - 1 / (1 + ++asked / often_asked)); };
}

mold::ClosingIn closing_in(const job::Job& job, const DrawerPlan& plan, const casting::Profile& profile) {
    mold::ClosingIn in;
    in.mold = mold_with(profile, *job.foam, *plan.cavity, plan.dose->poured_ml, air_left_ml(plan));
    in.band = *plan.band;
    in.times = *plan.times;
    in.pressure_factor = job.mold.pressure_factor;
    in.height_mm = plan.cavity->height_mm;
    in.plate_on_s = job.foam->mix_s + plan.dose->pour_s + job.shop->set_plate_s;
    in.drivers = job.shop->drivers;
    return in;
}

} // namespace

std::optional<mold::PlateIn> plate_in(const job::Job& job, const DrawerPlan& plan,
                                      const std::vector<shape::Vec>& last_places) {
    if (!plan.insert || !plan.dose || !plan.pressure || !plan.band || !plan.times) return std::nullopt;
    const auto profile = profile_today(job);
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
    in.plates = job.drawers.size();
    in.stiffeners = job::stiffeners_of(*job.shop);
    in.closures = job::closures_of(*job.shop);
    in.last_places = last_places;
    in.vent_clear_mm = (air::meat_diameters + 0.5) * air::vent_drill_mm + vent_rounding_mm;
    in.board = job.mold.board;
    in.box_board = job.mold.box_board;
    in.closure = job.mold.closure;
    in.stiffening = job.mold.stiffeners;
    in.spacing_mm = job.mold.spacing_mm;
    in.corner = job.mold.corner;
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

bool PlateStage::design(const job::Job& job, const std::vector<shape::Vec>& last_places, std::size_t round,
                        DrawerPlan& plan, const Watch& watch) {
    auto in = plate_in(job, plan, last_places);
    Designed& designed = designed_.at(round);
    if (!in) {
        designed.in.reset();
        return true;
    }
    if (designed.in != in) {
        designed.in.reset();
        auto plate = mold::plate_of(*in, looks_, stop_of(watch));
        if (!plate) return false;
        designed.plate = std::make_shared<const mold::Plate>(std::move(*plate));
        designed.in = std::move(in);
    }
    plan.plate = designed.plate;
    return true;
}

bool PlateStage::check(const job::Job& job, DrawerPlan& plan) {
    auto in = plate_in(job, plan);
    const mold::PlateAnswer& designed = plan.plate->answer;
    if (checked_in_ != in || checked_->answer.design != designed.design ||
        checked_->answer.runner_up != designed.runner_up) {
        auto plate = mold::rechecked(*in, designed.design, looks_);
        looks_.forget_boxes();
        plate.answer.runner_up = designed.runner_up;
        checked_ = std::make_shared<const mold::Plate>(std::move(plate));
        checked_in_ = std::move(in);
    }
    plan.plate = checked_;
    return checked_->answer.passes;
}

namespace {

/// The screws from below into the walls; none where none grips.
std::optional<job::Closure> foot_screw(double base_mm, double height_mm) {
    const auto length = stock::screw_length_mm(base_mm, height_mm, stock::joint_grip_mm);
    if (!length) return std::nullopt;
    job::Closure screw;
    screw.name = "foot screw"; // of no list; nobody reads it
    screw.diameter_mm = stock::joint_screw_mm;
    screw.length_mm = *length;
    return screw;
}

} // namespace

bool PlateStage::hold_below(const job::Job& job, DrawerPlan& plan, const Watch& watch) {
    plan.base.reset();
    auto in = plate_in(job, plan);
    if (!in || !plan.plate || !plan.plate->answer.passes) return true;
    const mold::PlateDesign& design = plan.plate->answer.design;
    const auto joint = foot_screw(design.box_board.thickness_mm, in->height_mm);
    if (!joint && design.closure.kind == job::ClosureKind::screw)
        return true; // rods and clamps go round both
    mold::BaseIn base{std::move(*in), design, joint.value_or(job::Closure{})};
    if (base_in_ != base) {
        base_in_.reset();
        auto found = mold::base_of(base, looks_, stop_of(watch));
        if (!found) return false;
        base_ = std::make_shared<const mold::Plate>(std::move(*found));
        base_in_ = std::move(base);
    }
    plan.base = base_;
    return true;
}

void plate_words(const job::Job& job, DrawerPlan& plan) {
    const auto in = plate_in(job, plan);
    DRAWERCAST_DEMAND(in && plan.plate, "a plate that holds something");
    const auto checks = mold::plate_checks(*in, *plan.plate);
    plan.checks.insert(plan.checks.end(), checks.begin(), checks.end());
    const auto drills = mold::drill_checks(plan.plate->answer.design, job.shop->drills_mm);
    plan.checks.insert(plan.checks.end(), drills.begin(), drills.end());
    if (!plan.base) return;
    const auto below = mold::base_checks(*in, *plan.base);
    plan.checks.insert(plan.checks.end(), below.begin(), below.end());
}

} // namespace drawercast::plan
