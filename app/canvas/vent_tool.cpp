// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/vent_tool.h"

#include "base/units.h"
#include "job/edit.h"
#include "job/edit_vents.h"
#include "plan/air_stage.h"

#include "canvas/vent_live.h"
#include "canvas/vent_places.h"
#include "language/say.h"
#include "language/spoken.h"

#include <QLineF>

#include <algorithm>
#include <cmath>
#include <utility>

namespace drawercast::app {

namespace {

constexpr double same_mm = 0.05; ///< a place told in the other frame and back is still the same vent
constexpr double inch_step_mm = units::mm_per_inch / 16;

using language::tr;

double to_step(double value, double step) { return std::round(value / step) * step; }

} // namespace

std::optional<std::size_t> VentTool::vent_at(QPointF px) const {
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

void VentTool::press(QPointF px, Keys) {
    if (!port_.air()) return;
    take_hold(px);
    port_.redraw_live();
}

void VentTool::take_hold(QPointF px) {
    cancel();
    const auto index = vent_at(px);
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

void VentTool::move(QPointF px, Keys keys) {
    if (!pressed_) return point_at(px);
    drag(px, keys);
    if (trial_) port_.say(trial_words(*trial_->tried, trial_->index, port_.job().display_units));
    port_.redraw_live();
}

void VentTool::point_at(QPointF px) {
    const auto under = vent_at(px);
    if (under == hovered_) return;
    hovered_ = under;
    if (under)
        port_.say(
            tr("V%1: drag it to lock it elsewhere, right-click for more.").arg(static_cast<int>(*under) + 1));
    port_.redraw_live();
}

void VentTool::drag(QPointF px, Keys keys) {
    if (!port_.air()) return;
    if (!trial_ && QLineF(pressed_->at, px).length() < drag_after_px) return;
    const shape::Vec by = port_.view().to_mm(px) - port_.view().to_mm(pressed_->at);
    const double step = port_.job().display_units == job::DisplayUnits::mm ? step_mm : inch_step_mm;
    shape::Vec at = pressed_->vent + by;
    if (!keys.no_snap) at = {to_step(at.x, step), to_step(at.y, step)};
    const auto& floor = port_.air()->model->in().floor; // a vent opens into the box, or it is none
    at = {std::clamp(at.x, 0.0, floor.width_mm), std::clamp(at.y, 0.0, floor.depth_mm)};
    try_at(at);
}

void VentTool::release(QPointF px, Keys) {
    if (!pressed_) return;
    store();
    point_at(px);
    port_.redraw_live();
}

void VentTool::store() {
    const auto pressed = std::exchange(pressed_, std::nullopt);
    const auto trial = std::exchange(trial_, std::nullopt);
    if (!pressed->last || !trial) return;
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

bool VentTool::let_go() {
    if (cancel()) return true;
    const bool any = port_.chosen_vent().has_value();
    port_.choose_vent(std::nullopt);
    return any;
}

void VentTool::renew() {
    hovered_.reset();
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

bool VentTool::arrow(const ArrowKey& key) {
    const auto index = chosen();
    const auto* plan = port_.built_plan();
    if (!index || plan == nullptr) return false;
    const auto& vent = port_.air()->vented.vents[*index];
    auto job = put(*index, vent.at + key.by_mm());
    if (!job) return false;
    const auto* drawer = job::find_drawer(*job, plan->id);
    const bool was_kept = vent.why == air::VentFor::kept;
    const std::size_t kept = was_kept ? *index : drawer->vents->keep.size() - 1;
    const shape::Vec at = drawer->vents->keep[kept].at;
    port_.commit_nudge(tr("Move vent"), std::move(*job), QStringLiteral("nudge vent %1").arg(kept));
    port_.choose_vent(at);
    return true;
}

/// "V3 at 120 mm, 88 mm, locked"
QString VentTool::words_of(std::size_t vent) const {
    const auto units = port_.job().display_units;
    const auto mm = [&](double value) { return language::say_length(value, units); };
    const auto& one = port_.air()->vented.vents[vent];
    return (one.why == air::VentFor::kept ? tr("V%1 at %2, %3, locked") : tr("V%1 at %2, %3"))
        .arg(static_cast<int>(vent) + 1)
        .arg(mm(one.at.x), mm(one.at.y));
}

QString VentTool::spoken() const {
    const auto index = chosen();
    return index ? words_of(*index) : QString();
}

bool VentTool::next(int step) {
    const auto air = port_.air();
    const auto* plan = port_.built_plan();
    if (!air || plan == nullptr || air->vented.vents.empty()) return false;
    const auto count = static_cast<std::ptrdiff_t>(air->vented.vents.size());
    std::ptrdiff_t to = step > 0 ? 0 : count - 1;
    if (const auto now = chosen()) to = static_cast<std::ptrdiff_t>(*now) + step;
    if (to < 0 || to >= count) return false;
    const auto& vent = air->vented.vents[static_cast<std::size_t>(to)];
    port_.choose_vent(vent_in_drawer(port_.job(), *plan, vent.at));
    port_.say(words_of(static_cast<std::size_t>(to)));
    return true;
}

bool VentTool::double_click(QPointF px) {
    if (!port_.air()) return false;
    port_.ask_for(vent_at(px) ? CanvasPort::Form::vent_drill : CanvasPort::Form::vent);
    return true;
}

MenuOf VentTool::menu_at(QPointF px) {
    if (!port_.air()) return MenuOf::sheet;
    take_hold(px); // chooses; nothing is to hang on the pointer
    cancel();
    port_.redraw_live();
    return MenuOf::vent;
}

CanvasTool::Menu VentTool::menu_of_chosen() const {
    const auto air = port_.air();
    if (!air) return {};
    const auto index = chosen();
    if (!index) return {MenuOf::vent, std::nullopt};
    return {MenuOf::vent, port_.view().to_px(air->vented.vents[*index].at)};
}

sheets::Inks VentTool::live(const LiveFrame& frame) const {
    const auto air = port_.air();
    if (!air) return {};
    return vent_ink({*air, port_.job().display_units, chosen(), hovered_, trial_, frame.view, frame.size,
                     frame.theme, frame.taken});
}

} // namespace drawercast::app
