// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/figure.h"

#include <functional>
#include <vector>

namespace drawercast::arrange {

/// Where figures may stand, and what must stay between them.
struct Room {
    shape::Box box;
    /// Its outlines where it is more than the box: the outer one, then holes. Empty: the box is all.
    std::vector<std::vector<shape::Vec>> rings;
    std::function<double(double, double)> wall_mm = [](double, double) { return touch_mm; }; ///< by depths
    std::function<double(double)> edge_mm = [](double) { return 0.0; };                      ///< by depth
    /// Figures that touch are too near: what is computed twice may differ in the last digits.
    static constexpr double touch_mm = 1e-6;
};

/// Where the figure's origin may be for the box alone; empty where it is too large.
shape::Box origins(const Room& room, const TurnedFigure& figure);
/// Whether the figure at `at` comes too near to the rings.
bool leaves(const Room& room, const TurnedFigure& figure, shape::Vec at);
/// How badly: over all discs, how far they stick over, times their radius.
double leaving_weight(const Room& room, const TurnedFigure& figure, shape::Vec at);

} // namespace drawercast::arrange
