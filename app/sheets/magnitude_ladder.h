// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <string>
#include <vector>

namespace drawercast::sheets {

/// Steps of the magnitude ladder at most.
inline constexpr int magnitude_bands = 7;

/// Even steps from `first`: band i lies between levels i and i + 1.
struct Bands {
    double first = 0;
    double step = 0;
    int count = 0;
    std::string caption;              ///< "lift, mm"
    std::vector<std::string> figures; ///< of the levels, one more than bands

    double level(int i) const { return first + step * i; }
    double share(int band) const { return static_cast<double>(band) / (magnitude_bands - 1); }
};

/// For lifts up to `most_mm`: round steps of the display unit, as fine as seven bands allow. None for no
/// lift.
Bands lift_bands(double most_mm, job::DisplayUnits units);

/// From first touch to the full mold, in expansion.
Bands arrival_bands(double first_touch, double full_expansion);

/// A small length to the digits that matter here: hundredths of a millimeter, thousandths of an inch; no
/// fractions.
std::string say_small(double mm, job::DisplayUnits units);

/// The depth ladder's figures, six steps up to `full_mm`.
std::vector<std::string> depth_figures(double full_mm, job::DisplayUnits units);

} // namespace drawercast::sheets
