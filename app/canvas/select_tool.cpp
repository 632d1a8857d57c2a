// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/select_tool.h"

#include "base/contains.h"
#include "job/edit.h"
#include "layout/checks.h"

#include "canvas/hit.h"
#include "language/say.h"
#include "language/spoken.h"

#include <QLineF>

#include <algorithm>

namespace drawercast::app {

namespace {

using language::tr;

} // namespace

std::vector<std::string> SelectTool::movable() const { return job::unlocked(port_.job(), port_.chosen()); }

double snap_reach_mm(const CanvasPort& port, CanvasTool::Keys keys) {
    return port.snapping() && !keys.no_snap ? SelectTool::snap_px / port.view().px_per_mm() : 0;
}

std::string SelectTool::hovered(QPointF px) const {
    const auto* plan = port_.drawer_plan();
    if (plan == nullptr) return {};
    return pocket_at(*plan, port_.view().to_mm(px), reach_px / port_.view().px_per_mm());
}

/// A notch can be got hold of on a pocket that is chosen alone; else a press means the pocket.
std::optional<std::size_t> SelectTool::notch_under(QPointF px) const {
    const auto* plan = port_.drawer_plan();
    if (plan == nullptr || port_.chosen().size() != 1 || movable().empty()) return std::nullopt;
    const auto* pocket = find_pocket(*plan, port_.chosen().front());
    if (pocket == nullptr) return std::nullopt;
    return notch_at(*pocket, port_.view().to_mm(px), 2 * reach_px / port_.view().px_per_mm());
}

SelectTool::Grip SelectTool::grip(QPointF px) const {
    if (const auto ring = turn_ring(); ring && QLineF(*ring, px).length() <= ring_reach_px) return Grip::ring;
    if (notch_under(px)) return Grip::notch;
    return hovered(px).empty() ? Grip::none : Grip::pocket;
}

std::optional<QPointF> SelectTool::turn_ring() const {
    const auto* plan = port_.drawer_plan();
    if (plan == nullptr || movable().empty() || port_.chosen_notch()) return std::nullopt;
    if (busy() && !std::holds_alternative<Pressed>(state_)) return std::nullopt;
    const auto box = box_of(*plan, port_.chosen());
    if (box.empty()) return std::nullopt;
    const QRectF px = port_.view().to_px(box);
    const double above = px.top() - ring_distance_px;
    const bool has_room =
        above > ring_reach_px || px.bottom() + ring_distance_px > port_.view_size().height();
    return QPointF(px.center().x(), has_room ? above : px.bottom() + ring_distance_px);
}

void SelectTool::press(QPointF px, Keys keys) {
    cancel();
    last_px_ = px;
    if (grip(px) == Grip::ring) {
        const auto about = box_of(*port_.drawer_plan(), port_.chosen()).center();
        state_ = Turn{TurnGesture({port_.job(), movable(), about, port_.view().to_mm(px)}), movable(), {}};
        return;
    }
    if (const auto notch = notch_under(px); notch && !keys.add) {
        const std::string subject = port_.chosen().front();
        port_.choose_notch(subject, *notch);
        state_ = Pressed{px, subject, true, notch};
        port_.say(tr("Drag the notch along the edge, or use the arrow keys; Del takes it away."));
        return;
    }
    const std::string subject = hovered(px);
    if (subject.empty()) {
        state_ = Band{px, keys.add ? port_.chosen() : std::vector<std::string>(), port_.chosen()};
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
    state_ = Pressed{px, subject, was_chosen, std::nullopt};
}

void SelectTool::start(const Pressed& pressed) {
    if (port_.drawer_plan() == nullptr || port_.drawer() == nullptr) return;
    if (movable().empty()) {
        port_.say(tr("Locked: unlock it to move it."));
        state_ = Idle{};
        return;
    }
    pressed.notch ? start_slide(pressed) : start_drag(pressed);
}

void SelectTool::start_drag(const Pressed& pressed) {
    port_.choose(port_.chosen()); // the pocket, not its notch
    port_.say(port_.snapping() ? tr("Hold Ctrl to move freely; Esc puts it back.")
                               : tr("Snapping is off (S); Esc puts it back."));
    const auto& plan = *port_.drawer_plan();
    const auto limits = layout::limits_of(port_.job(), *port_.drawer(), plan.insert);
    state_ = Drag{
        DragGesture({port_.job(), movable(), port_.view().to_mm(pressed.at)}, plan, limits), movable(), {}};
}

void SelectTool::start_slide(const Pressed& pressed) {
    const auto* pocket = find_pocket(*port_.drawer_plan(), pressed.subject);
    state_ = Idle{};
    if (pocket == nullptr) return;
    auto gesture = NotchGesture::begin(
        {port_.job(), pressed.subject, *pressed.notch, port_.view().to_mm(pressed.at)}, *pocket);
    if (gesture) state_ = Slide{std::move(*gesture), pressed.subject, {}};
}

void SelectTool::step(Drag& drag, QPointF px, Keys keys) {
    auto step = drag.gesture.at(port_.view().to_mm(px), {port_.grid_mm(), snap_mm(keys)});
    port_.show_guides(step.snap);
    drag.last = step.job;
    port_.preview(std::move(step.job), drag.subjects);
}

void SelectTool::step(Slide& slide, QPointF px, Keys keys) {
    auto step = slide.gesture.at(port_.view().to_mm(px), snap_mm(keys));
    port_.show_note(step.in_the_middle ? std::optional(LiveNote{tr("middle of the side"), step.at})
                                       : std::nullopt);
    slide.last = step.job;
    port_.preview(std::move(step.job), {slide.subject});
}

void SelectTool::step(Turn& turn, QPointF px, Keys keys) {
    const double whole = snap_mm(keys) > 0 ? TurnGesture::coarse_deg : TurnGesture::fine_deg;
    auto step = turn.gesture.at(port_.view().to_mm(px), whole);
    const QString said = language::fixed(step.by_deg, whole < 1 ? 1 : 0);
    port_.show_note(LiveNote{tr("turned %1°").arg(said), port_.view().to_mm(px)});
    turn.last = step.job;
    port_.preview(std::move(step.job), turn.subjects);
}

void SelectTool::step(Band& band, QPointF px, Keys) {
    shape::Box box;
    box.add(port_.view().to_mm(band.from));
    box.add(port_.view().to_mm(px));
    port_.show_band(box);
    auto chosen = band.kept;
    if (const auto* plan = port_.drawer_plan())
        for (auto& subject : pockets_inside(*plan, box))
            if (!contains(chosen, subject)) chosen.push_back(subject);
    port_.choose(chosen);
}

void SelectTool::move(QPointF px, Keys keys) {
    last_px_ = px;
    if (const auto* pressed = std::get_if<Pressed>(&state_)) {
        if (QLineF(pressed->at, px).length() < drag_after_px) return;
        start(Pressed(*pressed));
    }
    std::visit([&](auto& state) { step(state, px, keys); }, state_);
}

void SelectTool::keys_changed(Keys keys) {
    if (!std::holds_alternative<Pressed>(state_)) move(last_px_, keys);
}

void SelectTool::clear_marks() {
    port_.show_guides({});
    port_.show_band(std::nullopt);
    port_.show_note(std::nullopt);
}

void SelectTool::release(QPointF px, Keys keys) {
    if (px != last_px_) move(px, keys);
    auto state = std::exchange(state_, Idle{});
    clear_marks();
    // What was shown last is what is stored: the same value.
    if (auto* drag = std::get_if<Drag>(&state)) {
        port_.say({}); // the hint is over with the drag
        if (drag->last) port_.commit(tr("Move"), std::move(*drag->last));
    }
    if (auto* slide = std::get_if<Slide>(&state); slide && slide->last)
        port_.commit(tr("Slide notch"), std::move(*slide->last));
    if (auto* turn = std::get_if<Turn>(&state); turn && turn->last)
        port_.commit(tr("Turn"), std::move(*turn->last));
    if (const auto* pressed = std::get_if<Pressed>(&state); pressed && pressed->was_chosen && !pressed->notch)
        port_.choose({pressed->subject}); // a click on one of several chooses it alone
}

bool SelectTool::cancel() {
    const auto state = std::exchange(state_, Idle{});
    if (std::holds_alternative<Idle>(state)) return false;
    if (const auto* band = std::get_if<Band>(&state)) port_.choose(band->before);
    clear_marks();
    port_.preview(std::nullopt);
    if (std::holds_alternative<Drag>(state)) port_.say({}); // how to let go was said
    return true;
}

} // namespace drawercast::app
