// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace drawercast::app {

/// Copies of one pocket side by side. Walls are between the pockets' boxes, mm.
struct CopyOrder {
    int columns = 3; ///< left to right, the pocket itself counted
    int rows = 1;    ///< front to back
    double wall_x_mm = 10;
    double wall_y_mm = 10;
    bool leftward = false;
    bool backward = false; ///< rows go on to the back
    bool operator==(const CopyOrder&) const = default;
};

} // namespace drawercast::app
