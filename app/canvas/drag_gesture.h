// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "layout/checks.h"
#include "layout/snap.h"
#include "plan/plan.h"

#include <string>
#include <vector>

namespace drawercast::app {

/// Moving pockets by the pointer: a pure function from where the pointer is now to a job. What it answers
/// last is what is stored on release: the same value, not a second snap.
class DragGesture {
  public:
    struct Start {
        job::Job job;
        std::vector<std::string> subjects; ///< not locked ones
        shape::Vec grabbed;                ///< where the pointer took hold, mm
    };
    struct Snapping {
        double grid_mm = 0;   ///< 0: no grid
        double radius_mm = 0; ///< 0: nothing snaps
    };
    struct Step {
        job::Job job;
        layout::Snap snap;
        shape::Vec by;
    };

    /// `plan` is the plan of `start.job`'s drawer: boxes of the pockets that stay are taken from it.
    DragGesture(Start start, const plan::DrawerPlan& plan, const layout::DrawerLimits& limits);

    Step at(shape::Vec pointer, const Snapping& snapping) const;

  private:
    Start start_;
    layout::SnapIn still_; ///< `moving` where it was at the press
};

} // namespace drawercast::app
