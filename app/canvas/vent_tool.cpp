// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/vent_tool.h"

#include "base/units.h"
#include "job/edit.h"
#include "job/edit_vents.h"
#include "plan/air_stage.h"
#include "plan/say.h"

#include <QCoreApplication>
#include <QLineF>

#include <algorithm>
#include <cmath>
#include <utility>

namespace drawercast::app {

namespace {

constexpr double same_mm = 0.05; ///< a place told in the other frame and back is still the same vent
constexpr double inch_step_mm = units::mm_per_inch / 16;

QString tr(const char* text) { return QCoreApplication::translate("VentTool", text); }

shape::MoldMap map_of(const job::Job& job, const plan::DrawerPlan& plan) {
    return {plan.insert->box, job.foam->shrinkage};
}

double to_step(double value, double step) { return std::round(value / step) * step; }

} // namespace

shape::Vec vent_in_drawer(const job::Job& job, const plan::DrawerPlan& plan, shape::Vec mold) {
    return map_of(job, plan).to_drawer(shape::Point<shape::InMold>::of(mold)).vec();
}

shape::Vec vent_in_mold(const job::Job& job, const plan::DrawerPlan& plan, shape::Vec drawer) {
    return map_of(job, plan).to_mold(shape::Point<shape::InDrawer>::of(drawer)).vec();
}

std::optional<std::size_t> vent_near(const air::Answer& air, shape::Vec mold, double reach_mm) {
    std::optional<std::size_t> nearest;
    double least = reach_mm;
    const auto& vents = air.vented.vents;
    for (std::size_t i = 0; i < vents.size(); ++i)
        if (const double mm = shape::length(vents[i].at - mold); mm <= least) nearest = i, least = mm;
    return nearest;
}

std::optional<std::size_t> VentTool::hovered(QPointF px) const {
    const auto air = port_.air();
    if (!air) return std::nullopt;
    return vent_near(*air, port_.view().to_mm(px), reach_px / port_.view().px_per_mm());
}

std::optional<std::size_t> VentTool::chosen() const {
    const auto air = port_.air();
    const auto* plan = port_.built_plan();
    const auto at = port_.chosen_vent();
    if (!air || plan == nullptr || !at) return std::nullopt;
    return vent_near(*air, vent_in_mold(port_.job(), *plan, *at), same_mm);
}

void VentTool::press(QPointF px) {
    cancel();
    const auto index = hovered(px);
    const auto* plan = port_.built_plan();
    if (!index || plan == nullptr) return port_.choose_vent(std::nullopt);
    const auto& vent = port_.air()->vented.vents[*index];
    port_.choose_vent(vent_in_drawer(port_.job(), *plan, vent.at));
    port_.say(vent.why == air::VentFor::kept
                  ? tr("Locked by you: the others keep clear of it. Drag it, or let it go with Shift+L.")
                  : tr("Placed by the program. Drag it, or lock it with L, and the others follow."));
    pressed_ = Pressed{px, *index, vent.at, {}};
}

/// The job with the vent put there; one the program placed becomes the maker's.
std::optional<job::Job> VentTool::put(std::size_t index, shape::Vec mold) const {
    const auto air = port_.air();
    const auto* plan = port_.built_plan();
    const auto* drawer = port_.drawer();
    if (!air || plan == nullptr || drawer == nullptr || index >= air->vented.vents.size())
        return std::nullopt;
    const air::Vent& vent = air->vented.vents[index];
    const shape::Vec at = vent_in_drawer(port_.job(), *plan, mold);
    if (vent.why == air::VentFor::kept) return job::with_vent_moved(port_.job(), drawer->id, index, at);
    return job::with_vent(port_.job(), drawer->id, {at, vent.diameter_mm, {}});
}

void VentTool::try_at(shape::Vec mold) {
    const auto air = port_.air();
    const auto* plan = port_.built_plan();
    pressed_->last = put(pressed_->index, mold);
    if (!pressed_->last) return;
    const auto* drawer = job::find_drawer(*pressed_->last, plan->id);
    const bool was_kept = air->vented.vents[pressed_->index].why == air::VentFor::kept;
    const std::size_t index = was_kept ? pressed_->index : drawer->vents->keep.size() - 1;
    trial_ = VentTrial{index, pressed_->vent, plan::air_tried(*pressed_->last, *drawer, *plan, *air)};
}

void VentTool::move(QPointF px, bool free) {
    if (!pressed_ || !port_.air()) return;
    if (!trial_ && QLineF(pressed_->at, px).length() < drag_after_px) return;
    const shape::Vec by = port_.view().to_mm(px) - port_.view().to_mm(pressed_->at);
    const double step = port_.job().display_units == job::DisplayUnits::mm ? step_mm : inch_step_mm;
    shape::Vec at = pressed_->vent + by;
    if (!free) at = {to_step(at.x, step), to_step(at.y, step)};
    const auto& floor = port_.air()->model->in().floor; // a vent opens into the box, or it is none
    at = {std::clamp(at.x, 0.0, floor.width_mm), std::clamp(at.y, 0.0, floor.depth_mm)};
    try_at(at);
}

void VentTool::release() {
    const auto pressed = std::exchange(pressed_, std::nullopt);
    const auto trial = std::exchange(trial_, std::nullopt);
    if (!pressed || !pressed->last || !trial) return;
    const auto* plan = port_.built_plan();
    if (plan == nullptr) return;
    const shape::Vec at = vent_in_drawer(port_.job(), *plan, trial->tried->vented.vents[trial->index].at);
    port_.commit(tr("Move vent"), *pressed->last);
    port_.choose_vent(at);
}

bool VentTool::cancel() {
    const bool tried = trial_.has_value();
    pressed_.reset();
    trial_.reset();
    return tried;
}

void VentTool::renew() {
    if (!pressed_) return;
    const auto air = port_.air();
    const auto index = air ? vent_near(*air, pressed_->vent, same_mm) : std::nullopt;
    if (!index) {
        cancel();
        return;
    }
    pressed_->index = *index;
    if (trial_) try_at(trial_->tried->vented.vents[trial_->index].at);
}

std::optional<VentTool::Nudged> VentTool::nudged(shape::Vec by) const {
    const auto index = chosen();
    const auto* plan = port_.built_plan();
    if (!index || plan == nullptr) return std::nullopt;
    const shape::Vec mold = port_.air()->vented.vents[*index].at + by;
    auto job = put(*index, mold);
    if (!job) return std::nullopt;
    const bool was_kept = port_.air()->vented.vents[*index].why == air::VentFor::kept;
    const auto* drawer = job::find_drawer(*job, plan->id);
    const std::size_t kept = was_kept ? *index : drawer->vents->keep.size() - 1;
    const shape::Vec at = drawer->vents->keep[kept].at;
    return Nudged{std::move(*job), kept, at};
}

} // namespace drawercast::app
