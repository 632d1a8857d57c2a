// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/select_tool.h"

#include "job/edit.h"
#include "layout/checks.h"
#include "plan/say.h"

#include "canvas/hit.h"

#include <QCoreApplication>
#include <QLineF>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::app {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("SelectTool", text); }

double angle_deg(shape::Vec from, shape::Vec to) {
    return std::atan2(to.y - from.y, to.x - from.x) * 180 / std::numbers::pi;
}

double rounded_to(double value, double step) { return std::round(value / step) * step; }

constexpr double turn_step_deg = 15;
constexpr double fine_turn_deg = 0.1;

} // namespace

std::vector<std::string> SelectTool::movable() const {
    std::vector<std::string> free;
    for (const auto& subject : port_.chosen()) {
        const auto found = job::find_pocket(port_.job(), subject);
        if (found.pocket != nullptr && !found.pocket->locked) free.push_back(subject);
    }
    return free;
}

std::string SelectTool::hovered(QPointF px) const {
    const auto* plan = port_.drawer_plan();
    if (plan == nullptr) return {};
    return pocket_at(*plan, port_.view().to_mm(px), reach_px / port_.view().px_per_mm());
}

std::optional<QPointF> SelectTool::turn_ring() const {
    const auto* plan = port_.drawer_plan();
    if (plan == nullptr || movable().empty()) return std::nullopt;
    const auto box = box_of(*plan, port_.chosen());
    if (box.empty()) return std::nullopt;
    return port_.view().to_px(shape::Vec{box.center().x, box.max.y}) - QPointF(0, ring_distance_px);
}

void SelectTool::press(QPointF px, Keys keys) {
    cancel();
    if (const auto ring = turn_ring(); ring && QLineF(*ring, px).length() <= ring_reach_px) {
        const auto center = box_of(*port_.drawer_plan(), port_.chosen()).center();
        state_ =
            Turn{port_.job(), movable(), center, angle_deg(center, port_.view().to_mm(px)), std::nullopt};
        return;
    }
    const std::string subject = hovered(px);
    if (subject.empty()) {
        state_ = Band{px, keys.add ? port_.chosen() : std::vector<std::string>()};
        if (!keys.add) port_.choose({});
        return;
    }
    auto chosen = port_.chosen();
    const auto at = std::find(chosen.begin(), chosen.end(), subject);
    const bool was_chosen = at != chosen.end();
    if (keys.add) {
        was_chosen ? void(chosen.erase(at)) : chosen.push_back(subject);
        port_.choose(chosen);
        return;
    }
    if (!was_chosen) port_.choose({subject});
    state_ = Pressed{px, subject, was_chosen};
}

bool SelectTool::start_drag(const Pressed& pressed) {
    const auto* plan = port_.drawer_plan();
    const auto* drawer = port_.drawer();
    const auto subjects = movable();
    if (plan == nullptr || drawer == nullptr) return false;
    if (subjects.empty()) {
        port_.say(tr("Locked: unlock it to move it"));
        state_ = Idle{};
        return false;
    }
    const auto limits = layout::limits_of(port_.job(), *drawer, plan->insert);
    state_ =
        Drag{DragGesture({port_.job(), drawer->id, subjects, port_.view().to_mm(pressed.at)}, *plan, limits),
             std::nullopt};
    return true;
}

void SelectTool::step_drag(Drag& drag, QPointF px, Keys keys) {
    const DragGesture::Snapping snapping{port_.snapping() && !keys.no_snap, port_.grid_mm(),
                                         snap_px / port_.view().px_per_mm()};
    auto step = drag.gesture.at(port_.view().to_mm(px), snapping);
    port_.show_guides(step.snap);
    drag.last = step.job;
    port_.preview(std::move(step.job));
}

void SelectTool::step_turn(Turn& turn, QPointF px, Keys keys) {
    const double by = angle_deg(turn.center, port_.view().to_mm(px)) - turn.from_deg;
    const bool whole_steps = port_.snapping() && !keys.no_snap;
    const double turned = rounded_to(by, whole_steps ? turn_step_deg : fine_turn_deg);
    turn.last = job::turned(turn.at_press, turn.subjects, turned, turn.center);
    port_.preview(turn.last);
    port_.say(tr("turned %1°").arg(QString::fromStdString(plan::fixed(turned, 1))));
}

void SelectTool::step_band(const Band& band, QPointF px, Keys) {
    shape::Box box;
    box.add(port_.view().to_mm(band.from));
    box.add(port_.view().to_mm(px));
    port_.show_band(box);
    auto chosen = band.before;
    if (const auto* plan = port_.drawer_plan())
        for (auto& subject : pockets_inside(*plan, box))
            if (std::find(chosen.begin(), chosen.end(), subject) == chosen.end()) chosen.push_back(subject);
    port_.choose(chosen);
}

void SelectTool::move(QPointF px, Keys keys) {
    if (const auto* pressed = std::get_if<Pressed>(&state_)) {
        if (QLineF(pressed->at, px).length() < drag_after_px) return;
        if (!start_drag(Pressed(*pressed))) return;
    }
    if (auto* drag = std::get_if<Drag>(&state_)) step_drag(*drag, px, keys);
    if (auto* turn = std::get_if<Turn>(&state_)) step_turn(*turn, px, keys);
    if (auto* band = std::get_if<Band>(&state_)) step_band(*band, px, keys);
}

void SelectTool::release(QPointF px, Keys keys) {
    move(px, keys);
    auto state = std::exchange(state_, Idle{});
    port_.show_guides({});
    port_.show_band(std::nullopt);
    // What was shown last is what is stored: the same value.
    if (auto* drag = std::get_if<Drag>(&state); drag && drag->last)
        port_.commit(tr("Move"), std::move(*drag->last));
    if (auto* turn = std::get_if<Turn>(&state); turn && turn->last)
        port_.commit(tr("Turn"), std::move(*turn->last));
    if (const auto* pressed = std::get_if<Pressed>(&state); pressed && pressed->was_chosen)
        port_.choose({pressed->subject}); // a click on one of several chooses it alone
}

bool SelectTool::cancel() {
    const bool was_busy = busy();
    if (const auto* band = std::get_if<Band>(&state_)) port_.choose(band->before);
    state_ = Idle{};
    if (was_busy) {
        port_.preview(std::nullopt);
        port_.show_guides({});
        port_.show_band(std::nullopt);
    }
    return was_busy;
}

} // namespace drawercast::app
