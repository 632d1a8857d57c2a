// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/answers.h"
#include "casting/band.h"
#include "layout/check.h"
#include "layout/pocket.h"

#include <optional>
#include <vector>

namespace drawercast::casting {

inline constexpr double level_altitude_m = 150; ///< up to here nobody need think of altitude (our guess)

/// Of the foam, once for a job: no-cup; cup-warmth (°C); cup-far where cups show 1.3 times the label's
/// expansion or a share of 1/1.3, to be mended from 1.7 on: then something was read wrongly (our guess).
std::vector<layout::Check> foam_checks(const Profile& profile);

struct DoseChecksIn {
    BandIn mold; ///< with its dose
    Dose dose;
    Band band; ///< band_of(mold)
    Times times;
    double altitude_m = 0;
    int people = 1;
    bool operator==(const DoseChecksIn&) const = default;
};

/// Of one drawer's dose: short-if-low and hard-if-high (value and limit: the fill at that end),
/// too-many-batches (batches, people), pour-late (mixing and pouring, pot life, s) and dose-altitude (value:
/// altitude, m; limit: the closed pressure that the dose right at sea level would give here, kPa).
std::vector<layout::Check> dose_checks(const DoseChecksIn& in);

/// volume-doubted: an object said to be larger, by dunking, than what its outlines hold; a fiftieth is the
/// bowl's, half as much again must be mended (our guess).
std::optional<layout::Check> volume_check(const layout::PocketForm& form, double insert_mm, double volume_ml);

/// Of a drawer that has no dose (dose_of was refused); value: what the mold holds, mL.
layout::Check dose_refused_check(double net_mm3);

} // namespace drawercast::casting
