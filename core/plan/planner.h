// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <memory>

namespace drawercast::plan {

/// Answers jobs that differ little from the one before, quickly: it owns memories of earlier stages and
/// nothing else. The answer never depends on what was asked before: fast(job) equals compute(job) bitwise.
class Planner {
  public:
    Planner();
    ~Planner();
    Planner(Planner&&) noexcept;
    Planner& operator=(Planner&&) noexcept;

    Plan fast(const job::Job& job);

  private:
    struct Memory;
    std::unique_ptr<Memory> memory_;
};

} // namespace drawercast::plan
