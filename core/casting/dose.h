// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "casting/answers.h"
#include "casting/profile.h"
#include "job/foam.h"
#include "job/shared.h"
#include "job/shop.h"

namespace drawercast::casting {

inline constexpr double squeeze_out_share = 0.10; ///< of the overpack: the most that may leave through vents
inline constexpr int start_percent_by_label = 20; ///< least automatic overpack (common practice)
inline constexpr int start_percent_by_cup = 15;

struct DoseIn {
    Profile profile;
    job::Shared<job::Foam> foam; ///< ratio, densities, pigment, overpack
    job::Shared<job::Shop> shop; ///< container, mixer, pour
    double net_mm3 = 0;          ///< what the mold holds
    double insert_area_mm2 = 0;  ///< of the mold
    bool operator==(const DoseIn&) const = default;
};

/// Foam for one mold. V_L = (1 + o)·V_net/E'; a reserve of 0.10·o of it is mixed for squeeze-out but not
/// poured. An automatic overpack starts from common practice (20 % by the label, 15 % after a cup) and rises
/// by 1 % until the mold is full at the low end of the band; where that is too hard at the high end, no
/// overpack passes both and the dose says so. Refused ("dose-refused") where the liquid alone fills the mold,
/// at the high end of the band included, where the overpack is below 0, and where no number of batches fits.
Expected<Dose> dose_of(const DoseIn& in);

/// The overpack that dose_of takes where none is set, set or not; 0.15 = 15 %.
double automatic_overpack(const DoseIn& in);

} // namespace drawercast::casting
