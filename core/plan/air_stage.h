// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/answer.h"
#include "base/watch.h"
#include "plan/plan.h"

#include <memory>
#include <optional>
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

/// `last` for vents the maker is trying, by a sketch and without a solve, on the floor `last` was worked out
/// on: vents, what stays, squeeze-out. `plan`: the plan `last` is of.
std::shared_ptr<const air::Answer> air_tried(const job::Job& job, const job::Drawer& drawer,
                                             const DrawerPlan& plan, const air::Answer& last);
/// The last place to fill, drawer frame, for a picture that follows a pocket being moved: one solve. Absent
/// where the plan has no dose.
std::optional<shape::Point<shape::InDrawer>> last_air(const job::Job& job, const job::Drawer& drawer,
                                                      const DrawerPlan& plan);

/// The floor of the mold of a drawer that has an insert.
air::Floor floor_of(const job::Job& job, const DrawerPlan& plan);

/// Adds the places of air pockets that keep their air in spite of the vents, mold frame; whether any was not
/// there yet.
bool add_unvented(const air::Answer& air, std::vector<shape::Vec>& places);

} // namespace drawercast::plan
