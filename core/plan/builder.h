// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/watch.h"
#include "plan/plan.h"

#include <memory>
#include <optional>

namespace drawercast::plan {

/// Works out what takes seconds rather than microseconds, on top of the quick answer: for each drawer where
/// air stays, then by turns the plate that holds the pressure and the vents between what stands on it; at
/// last what to cut and buy for all of them. It remembers the last answer of each drawer by what that answer
/// read; like the Planner's, its answer never depends on what was asked before. One thread at a time.
class Builder {
  public:
    Builder();
    ~Builder();
    Builder(Builder&&) noexcept;
    Builder& operator=(Builder&&) noexcept;

    /// `quick` with its long parts and their checks; nothing where `watch` asked to stop. Drawers are worked
    /// out side by side; `watch` is asked by one of them at a time, on whichever thread.
    std::optional<Plan> build(const job::Job& job, Plan quick, const Watch& watch);

  private:
    struct Memory;
    std::unique_ptr<Memory> memory_;
};

} // namespace drawercast::plan
