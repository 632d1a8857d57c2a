// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/palette.h"
#include "theme/roles.h"

#include <vector>

namespace drawercast::theme {

/// CSS and Qt agree on 96 px to the inch; pages and drawings on paper are laid out in these.
inline constexpr double px_per_mm = 96 / 25.4;

/// A line as it is drawn, all in device units.
struct Pen {
    QColor color;
    double width = 1;
    std::vector<double> dashes; ///< on, off, …; empty: continuous
    bool operator==(const Pen&) const = default;
};

/// Weights and dashes of ISO 128: on screen in px, on paper in mm. `px` is the size of a logical pixel (on
/// paper: of 1/96 in) in device units.
Pen pen_of(LineRole role, const Theme& theme, Medium medium, double px);

/// Whether a line of this role gets a paper-colored casing, as it must be seen over any wash.
bool is_cased(LineRole role);

QColor color_of(const Wash& wash, const Theme& theme);

} // namespace drawercast::theme
