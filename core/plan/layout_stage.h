// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layout/checks.h"
#include "layout/recheck.h"

#include <optional>
#include <vector>

namespace drawercast::plan {

/// Keeps a Recheck in step with the pockets that stand now, by the few that moved, came or went.
class LayoutStage {
  public:
    /// The layout's checks, sorted. The reference stays good until the next call.
    const std::vector<layout::Check>& update(const layout::DrawerLimits& limits,
                                             const std::vector<layout::Standing>& standing);

  private:
    void follow(const std::vector<layout::Standing>& standing);

    std::optional<layout::Recheck> recheck_;
};

} // namespace drawercast::plan
