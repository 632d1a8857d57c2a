// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/vents.h"
#include "base/watch.h"
#include "mold/base.h"
#include "mold/plate_search.h"
#include "plan/plan.h"

#include <array>
#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

namespace drawercast::plan {

/// The pressure plate of one drawer: designed for the pressure in the plan, then looked at again under what
/// its vents leave. Remembers the last answers by what they read.
class PlateStage {
  public:
    /// Puts the plate into `plan`, its stiffeners off `last_places` (mold frame) where that can be; nothing
    /// where the drawer has no dose. False where `watch` asked to stop. `round` < rounds.
    bool design(const job::Job& job, const std::vector<shape::Vec>& last_places, std::size_t round,
                DrawerPlan& plan, const Watch& watch);
    /// The same design under the pressure in `plan` now; whether it holds.
    bool check(const job::Job& job, DrawerPlan& plan);

    /// Puts the base under a plate that holds into `plan`. False where `watch` asked to stop.
    bool hold_below(const job::Job& job, DrawerPlan& plan, const Watch& watch);

    /// The plate is designed again for the air that the last one's vents left, at most so many times.
    static constexpr std::size_t rounds = 5;

  private:
    struct Designed {
        std::optional<mold::PlateIn> in;
        std::shared_ptr<const mold::Plate> plate;
    };
    std::array<Designed, rounds> designed_; ///< by round
    std::optional<mold::PlateIn> checked_in_;
    std::shared_ptr<const mold::Plate> checked_;
    std::optional<mold::BaseIn> base_in_;
    std::shared_ptr<const mold::Plate> base_;
    mold::PlateLooks looks_;
};

/// What the plate of a drawer reads; absent where there is nothing to hold.
std::optional<mold::PlateIn> plate_in(const job::Job& job, const DrawerPlan& plan,
                                      const std::vector<shape::Vec>& last_places = {});

/// Puts into `plan` what must be said of its plate and base.
void plate_words(const job::Job& job, DrawerPlan& plan);

/// What vents keep off.
air::KeptClear clear_of(const mold::PlateDesign& design);

} // namespace drawercast::plan
