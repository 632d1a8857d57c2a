// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <string>
#include <vector>

namespace drawercast::app {

/// Turning pockets about a point by the pointer: a pure function from where the pointer is now to a job.
class TurnGesture {
  public:
    struct Start {
        job::Job job;
        std::vector<std::string> subjects;
        shape::Vec about;   ///< drawer mm
        shape::Vec grabbed; ///< where the pointer took hold
    };
    struct Step {
        job::Job job;
        double by_deg = 0; ///< counter-clockwise, over −180 up to 180
    };

    explicit TurnGesture(Start start) : start_(std::move(start)) {}

    /// In whole steps of `step_deg`.
    Step at(shape::Vec pointer, double step_deg) const;

    static constexpr double coarse_deg = 15;
    static constexpr double fine_deg = 0.1;

  private:
    Start start_;
};

} // namespace drawercast::app
