// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/foam.h"

#include <vector>

namespace drawercast::casting {

/// Density of what a straight cup holds once it has risen, g/mL.
double cup_density_g_ml(const job::Cup& cup);

/// Expansion that one cup shows where it was poured: its liquid's density over its foam's. Refused
/// ("cup-unusable") where the foam is not lighter than the liquid, or the times do not follow one another.
Expected<double> cup_expansion(const job::Cup& cup, double liquid_g_ml);

/// What the cups in use show together, at the place they were poured: means, and how far they lie apart.
struct CupMean {
    int count = 0;
    double expansion = 0;
    double spread = 0;    ///< half of greatest less least expansion, as a share of the mean; 0 of one cup
    double deviation = 0; ///< standard deviation of the expansions (n − 1); 0 of one cup
    double start_s = 0;
    double half_s = 0;
    double full_s = 0;
    double parts_c = 0;
    bool operator==(const CupMean&) const = default;
};

/// Of the foam's `cup` and `cups` those in use; in this order.
std::vector<job::Cup> cups_in_use(const job::Foam& foam);

/// Refused as cup_expansion() refuses any of them. Demands one at least.
Expected<CupMean> mean_of_cups(const std::vector<job::Cup>& cups, double liquid_g_ml);

} // namespace drawercast::casting
