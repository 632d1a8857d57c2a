// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/watch.h"
#include "plan/plan.h"

#include "air/answer.h"

#include <memory>
#include <vector>

namespace drawercast::plan {

/// Air and vents of one drawer, in two steps around the plate's design: where air stays needs no plate, but
/// vents keep clear of what stands on it. Remembers the last map by what it read.
class AirStage {
  public:
    /// Where air stays, and into `plan` the pressure that is left to a plate by the vents the maker set:
    /// those that place themselves leave none. Nothing where the drawer has no dose. False where `watch`
    /// asked to stop.
    bool map(const job::Job& job, const job::Drawer& drawer, DrawerPlan& plan, const Watch& watch);

    /// The vents, the pressure with the air they leave, and what must be said of both. `plate_mm`: its
    /// thickness.
    bool vent(const job::Job& job, const job::Drawer& drawer, const air::KeptClear& clear, double plate_mm,
              DrawerPlan& plan, const Watch& watch);

  private:
    std::shared_ptr<const air::Model> model_;
};

/// Adds the places of air pockets that keep their air in spite of the vents, mold frame; whether any was not
/// there yet.
bool add_unvented(const air::Answer& air, std::vector<shape::Vec>& places);

} // namespace drawercast::plan
