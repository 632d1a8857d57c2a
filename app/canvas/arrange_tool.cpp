// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/arrange_tool.h"

#include "base/contains.h"
#include "job/edit.h"
#include "plan/sentences.h"

#include "canvas/canvas_access.h"
#include "canvas/hit.h"
#include "language/in_words.h"
#include "language/spoken.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

namespace drawercast::app {

namespace {

constexpr int nudged_ms = 1500;

using language::tr;

Qt::CursorShape cursor_of(SelectTool::Grip grip) {
    switch (grip) {
    case SelectTool::Grip::ring:
        return Qt::PointingHandCursor;
    case SelectTool::Grip::notch:
    case SelectTool::Grip::pocket:
        return Qt::SizeAllCursor;
    case SelectTool::Grip::none:
        break;
    }
    return Qt::ArrowCursor;
}

/// Row by row from the back, from left to right.
std::vector<std::string> reading_order(const plan::DrawerPlan& plan) {
    auto pockets = plan.pockets;
    std::stable_sort(pockets.begin(), pockets.end(), [](const auto& a, const auto& b) {
        constexpr double row_mm = 40; // centers this close together read as one row
        const auto row = [](const layout::PlacedPocket& p) { return std::floor(p.box.center().y / row_mm); };
        return row(*a) != row(*b) ? row(*a) > row(*b) : a->box.center().x < b->box.center().x;
    });
    std::vector<std::string> order;
    for (const auto& pocket : pockets) order.push_back(pocket->subject);
    return order;
}

} // namespace

ArrangeTool::ArrangeTool(CanvasPort& port) : port_(port), select_(port) {
    nudged_for_.setSingleShot(true);
    nudged_for_.setInterval(nudged_ms);
    QObject::connect(&nudged_for_, &QTimer::timeout, &nudged_for_, [this] {
        nudged_.clear();
        port_.redraw_live();
    });
}

void ArrangeTool::press(QPointF px, Keys keys) {
    nudged_.clear();
    const auto* check = port_.check_at(px);
    if (check != nullptr && select_.grip(px) != SelectTool::Grip::ring) return port_.choose_check(*check);
    select_.press(px, keys);
    port_.redraw_live();
}

void ArrangeTool::move(QPointF px, Keys keys) {
    if (select_.busy()) return select_.move(px, keys);
    point_at(px);
}

void ArrangeTool::release(QPointF px, Keys keys) {
    select_.release(px, keys);
    point_at(px);
    port_.redraw_live();
}

void ArrangeTool::leave() {
    hovered_.clear();
    cursor_ = Qt::ArrowCursor;
}

/// Nothing pressed: what is under the pointer is told and outlined.
void ArrangeTool::point_at(QPointF px) {
    const auto* check = port_.check_at(px);
    const auto grip = select_.grip(px);
    const bool on_check = check != nullptr && grip != SelectTool::Grip::ring;
    cursor_ = on_check ? Qt::PointingHandCursor : cursor_of(grip);
    const std::string under = check != nullptr ? std::string() : select_.hovered(px);
    if (check != nullptr) port_.say(in_words(plan::sentence(*check, port_.shown())));
    if (grip == SelectTool::Grip::ring)
        port_.say(tr("Drag to turn in steps of 15°; hold Ctrl to turn freely."));
    if (under == hovered_) return;
    hovered_ = under;
    if (!hovered_.empty()) port_.say(QString::fromStdString(plan::subject_name(hovered_, port_.shown())));
    port_.redraw_live();
}

/// On a notch its sizes are asked for, on a pocket its object's.
bool ArrangeTool::double_click(QPointF px) {
    const auto grip = select_.grip(px);
    const std::string subject = select_.hovered(px);
    if (grip == SelectTool::Grip::notch && port_.chosen_notch()) {
        port_.ask_for(CanvasPort::Form::notch);
    } else if (grip == SelectTool::Grip::pocket && !subject.empty()) {
        port_.choose({subject});
        port_.ask_for(CanvasPort::Form::object);
    }
    return true;
}

bool ArrangeTool::let_go() {
    if (cancel()) return true;
    const bool any = !port_.chosen().empty();
    port_.choose({});
    return any;
}

MenuOf ArrangeTool::menu_at(QPointF px) {
    if (const auto* check = port_.check_at(px)) {
        port_.choose_check(*check);
        return MenuOf::check;
    }
    const std::string subject = select_.hovered(px);
    if (subject.empty()) return MenuOf::sheet;
    const auto& chosen = port_.chosen();
    if (!contains(chosen, subject)) port_.choose({subject});
    return MenuOf::pocket;
}

CanvasTool::Menu ArrangeTool::menu_of_chosen() const {
    const auto* plan = port_.drawer_plan();
    const auto box = plan == nullptr ? shape::Box{} : box_of(*plan, port_.chosen());
    if (box.empty()) return {};
    return {MenuOf::pocket, port_.view().to_px(box.center())};
}

QString ArrangeTool::spoken() const {
    const auto* plan = port_.drawer_plan();
    QStringList said;
    for (const auto& subject : port_.chosen())
        if (const QString one = plan != nullptr ? spoken_pocket(port_.shown(), *plan, subject) : QString();
            !one.isEmpty())
            said << one;
    return said.join(QStringLiteral("; "));
}

bool ArrangeTool::next(int step) {
    const auto* plan = port_.drawer_plan();
    if (plan == nullptr || plan->pockets.empty()) return false;
    const auto order = reading_order(*plan);
    const auto& chosen = port_.chosen();
    const auto at = chosen.empty() ? order.end() : std::find(order.begin(), order.end(), chosen.back());
    std::ptrdiff_t to = step > 0 ? 0 : static_cast<std::ptrdiff_t>(order.size()) - 1;
    if (at != order.end()) to = (at - order.begin()) + step;
    if (to < 0 || to >= static_cast<std::ptrdiff_t>(order.size())) return false;
    const auto& subject = order[static_cast<std::size_t>(to)];
    port_.choose({subject});
    port_.say(QString::fromStdString(plan::subject_name(subject, port_.shown())));
    return true;
}

bool ArrangeTool::arrow(const ArrowKey& key) {
    if (port_.chosen().empty()) return false;
    nudge(key.by_mm());
    return true;
}

void ArrangeTool::nudge(shape::Vec by) {
    const auto free = select_.movable();
    if (free.empty()) return port_.say(tr("Locked: unlock it to move it."));
    if (port_.chosen_notch()) return nudge_notch(by);
    QString key = "nudge";
    for (const auto& subject : free) key += " " + QString::fromStdString(subject);
    nudged_ = free;
    nudged_for_.start();
    port_.commit_nudge(tr("Nudge"), job::moved(port_.job(), free, by), key);
}

/// Along the edge, whichever way leads toward the arrow.
void ArrangeTool::nudge_notch(shape::Vec by) {
    const auto* plan = port_.drawer_plan();
    const std::string subject = port_.chosen().front();
    const std::size_t notch = *port_.chosen_notch();
    const auto* pocket = plan == nullptr ? nullptr : find_pocket(*plan, subject);
    if (pocket == nullptr) return;
    const auto gesture = NotchGesture::begin({port_.job(), subject, notch, {}}, *pocket);
    if (!gesture) return;
    constexpr double across = 0.2; // such an arrow points into the pocket or out of it
    const double toward = shape::dot(gesture->way(), by) / shape::length(by);
    if (std::abs(toward) < across) return port_.say(tr("A notch slides along its pocket’s edge."));
    const double step = std::copysign(shape::length(by), toward);
    const QString key = QStringLiteral("slide %1 %2").arg(QString::fromStdString(subject)).arg(notch);
    port_.commit_nudge(tr("Slide notch"), gesture->slid(step).job, key);
}

sheets::Inks ArrangeTool::live(const LiveFrame& frame) const {
    const auto* plan = port_.drawer_plan();
    if (plan == nullptr) return {};
    const bool dropping = !frame.moving.empty() && !select_.busy(); // it hangs on another pointer
    LiveScene scene{frame, *plan, port_.shown(), dropping ? frame.moving : port_.chosen(),
                    frame.moving.empty() ? nudged_ : frame.moving};
    scene.notch = port_.chosen_notch();
    scene.hovered = hovered_;
    if (!dropping) scene.turn_ring = select_.turn_ring();
    return live_ink(scene);
}

} // namespace drawercast::app
