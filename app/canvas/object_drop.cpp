// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/object_drop.h"

#include "job/edit.h"
#include "layout/checks.h"

#include "canvas/select_tool.h"
#include "language/spoken.h"

#include <utility>

namespace drawercast::app {

bool ObjectDrop::enter(const std::string& object, QPointF px) {
    held_.reset();
    const auto* target = port_.drawer();
    if (target == nullptr) return false;
    const std::string drawer_id = target->id;
    const auto at = port_.view().to_mm(px);
    std::string made;
    job::Job job = job::placed(port_.job(), drawer_id, object, {at, 0}, &made);
    if (made.empty()) return false;
    port_.preview(job, {made}); // so that there is a plan of it
    const auto* plan = port_.drawer_plan();
    if (plan == nullptr || port_.drawer() == nullptr) {
        port_.preview(std::nullopt);
        return false;
    }
    const auto limits = layout::limits_of(job, *port_.drawer(), plan->insert);
    DragGesture gesture({job, {made}, at}, *plan, limits);
    held_ = Held{made, std::move(gesture), std::move(job)};
    return true;
}

void ObjectDrop::move(QPointF px, CanvasTool::Keys keys) {
    if (!held_) return;
    auto step = held_->gesture.at(port_.view().to_mm(px), {port_.grid_mm(), snap_reach_mm(port_, keys)});
    port_.show_guides(step.snap);
    held_->last = step.job;
    port_.preview(std::move(step.job), {held_->subject});
}

void ObjectDrop::leave() {
    held_.reset();
    port_.show_guides({});
    port_.preview(std::nullopt);
}

bool ObjectDrop::drop() {
    auto held = std::exchange(held_, std::nullopt);
    if (!held) return false;
    port_.show_guides({});
    port_.commit(language::tr("Place"), std::move(held->last));
    port_.choose({held->subject});
    return true;
}

} // namespace drawercast::app
