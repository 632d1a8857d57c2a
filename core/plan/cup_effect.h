// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <optional>

namespace drawercast::plan {

/// What one drawer's mold takes of a foam, and what that does in it.
struct FoamEffect {
    double expansion = 0; ///< E', at this altitude
    double uncertainty = 0;
    casting::Dose dose;
    casting::Pressure pressure;
    bool operator==(const FoamEffect&) const = default;
};

/// The drawer's mold with another foam, or the same one with other cups, and the air its vents leave now.
/// Absent where the drawer has no cavity or the foam is refused there. The mold's size stays: the foam's
/// shrinkage is not looked at again.
std::optional<FoamEffect> effect_of(const job::Job& job, const DrawerPlan& drawer, const job::Foam& foam);

/// The foam with no cup in use.
job::Foam by_label(job::Foam foam);

} // namespace drawercast::plan
