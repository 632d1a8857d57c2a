// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/watch.h"
#include "mold/plate_search.h"
#include "plan/plan.h"

#include "air/vents.h"

#include <memory>
#include <optional>

namespace drawercast::plan {

/// The pressure plate of one drawer: designed for the pressure before vents are placed, then looked at again
/// under what the vents leave. Remembers the last answers by what they read.
class PlateStage {
  public:
    /// Puts the plate into `plan`; nothing where the drawer has no dose. False where `watch` asked to stop.
    bool design(const job::Job& job, DrawerPlan& plan, const Watch& watch);
    /// The same design under the pressure in `plan` now, and what must be said of it.
    void check(const job::Job& job, DrawerPlan& plan);

  private:
    std::optional<mold::PlateIn> designed_in_;
    std::shared_ptr<const mold::Plate> designed_;
    std::optional<mold::PlateIn> checked_in_;
    std::shared_ptr<const mold::Plate> checked_;
};

/// What the plate of a drawer reads; absent where there is nothing to hold.
std::optional<mold::PlateIn> plate_in(const job::Job& job, const DrawerPlan& plan);

/// What vents keep off.
air::KeptClear clear_of(const mold::PlateDesign& design);

} // namespace drawercast::plan
