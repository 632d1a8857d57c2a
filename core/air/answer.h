// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/model.h"
#include "air/squeeze.h"
#include "layout/check.h"

#include <memory>
#include <vector>

namespace drawercast::air {

/// What one drawer's mold does with its air.
struct Answer {
    std::shared_ptr<const Model> model; ///< where air stays, and the pour map
    VentsIn vents_in;
    Vented vented;
    Impulse impulse;
    SqueezeIn squeeze_in;
    Squeeze squeeze;
};

/// Whether both say the same of the same mold.
bool same(const Answer& a, const Answer& b);

/// A choice of drill for the vents as they stand, unpegged.
struct DrillChoice {
    double drill_mm = 0;
    int count = 0;
    Squeeze squeeze;
};
/// Each of `drills_mm`, ascending, with 1 … `most` vents: squeeze-out and held pressure by drill and count.
std::vector<DrillChoice> drill_choices(const SqueezeIn& in, std::vector<double> drills_mm, int most);

struct ChecksIn {
    const Answer& answer;
    double viscosity_pa_s = 0;
};

/// air-pocket-unvented (mL that stay), vent-on-stiffener and vent-meat (mm of wood), squeeze-out (mL against
/// what was mixed for it), floor-slow (kPa·s: 12·μ·φ/1000 against ∫p dt from contact to rise), slot-narrow
/// (mm), channel-shut (mL it needs) and pours-over (mL set by hand against what is poured); vent-outside and
/// pour-outside, of those set by hand where no foam is. Points in the mold frame.
std::vector<layout::Check> air_checks(const ChecksIn& in);

} // namespace drawercast::air
