// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_options.h"
#include "mold/plate_trial.h"
#include "mold/screws.h"

namespace drawercast::mold {

/// A design with its answer and how it is closed.
struct Plate {
    PlateAnswer answer;
    Closing closing;
    bool operator==(const Plate&) const = default;
};

/// What a trial means under this mold's pressures: every value beside its limit, and which governs.
Plate judged(const PlateIn& in, const PlateDesign& design, Trial trial);

/// Of a closure of the design: mean ultimate, and how far a screw may and does go into the wall.
Joint joint_of(const PlateIn& in, const PlateDesign& design, const ClosureAt& closure);
const job::Closure& kind_of(const PlateDesign& design, const ClosureAt& closure);

Pattern pattern_of(const PlateIn& in, const PlateAnswer& answer);

} // namespace drawercast::mold
