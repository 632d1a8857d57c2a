// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/drag_gesture.h"

#include "base/contains.h"
#include "job/edit.h"
#include "layout/checks.h"
#include "shape/boxes.h"

#include <algorithm>

namespace drawercast::app {

namespace {

double greatest_depth(const layout::PlacedPocket& pocket) { return pocket.form->greatest_depth_mm; }

} // namespace

DragGesture::DragGesture(Start start, const plan::DrawerPlan& plan, const layout::DrawerLimits& limits)
    : start_(std::move(start)) {
    double depth = 0;
    for (const auto& subject : start_.subjects)
        if (const auto* pocket = find_pocket(plan, subject)) {
            still_.moving.add(pocket->box);
            depth = std::max(depth, greatest_depth(*pocket));
        }
    const auto moves = [&](const std::string& subject) { return contains(start_.subjects, subject); };
    for (const auto& pocket : plan.pockets)
        if (!moves(pocket->subject))
            still_.neighbors.push_back(
                {pocket->box, limits.minimums.wall(std::min(depth, greatest_depth(*pocket)))});
    if (plan.insert) still_.insert = plan.insert->box;
    still_.edge_mm = limits.minimums.edge(depth);
}

DragGesture::Step DragGesture::at(shape::Vec pointer, const Snapping& snapping) const {
    Step step;
    step.by = pointer - start_.grabbed;
    if (snapping.radius_mm > 0 && !still_.moving.empty()) {
        auto in = still_;
        in.moving = shape::moved(still_.moving, step.by);
        in.grid_mm = snapping.grid_mm;
        in.radius_mm = snapping.radius_mm;
        step.snap = layout::snapped(in);
        step.by = step.by + step.snap.shift();
    }
    step.job = job::moved(start_.job, start_.subjects, step.by);
    return step;
}

} // namespace drawercast::app
