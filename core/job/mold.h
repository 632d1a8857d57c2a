// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/unknown.h"

#include <optional>
#include <string>

/// How the mold is to be built, and the least walls of the insert.
namespace drawercast::job {

enum class BoxCorner { lapped, pinwheel };
enum class Along { short_side, long_side };

struct StiffenerChoice {
    int count = 0;
    std::string name;
    Along along = Along::short_side;
    bool glued = false;
    Unknowns unknown;
    bool operator==(const StiffenerChoice&) const = default;
};

struct Mold {
    double fillet_mm = 5;
    double film_mm = 0.1;
    BoxCorner corner = BoxCorner::lapped;
    bool gasket = false;
    std::optional<double> spacing_mm;
    std::optional<std::string> board;
    std::optional<std::string> box_board;
    std::optional<std::string> closure;
    std::optional<StiffenerChoice> stiffeners;
    double vent_spacing_mm = 150;
    double pressure_factor = 1.5;
    bool share_walls = false; ///< drawers are cast one after the other, and equal walls serve them all
    Unknowns unknown;
    bool operator==(const Mold&) const = default;
};

struct Minimums { ///< null: by the foam's firmness
    std::optional<double> wall_mm;
    std::optional<double> wall_ratio; ///< wall at least depth / ratio
    std::optional<double> edge_mm;
    std::optional<double> floor_mm;
    Unknowns unknown;
    bool operator==(const Minimums&) const = default;
};

} // namespace drawercast::job
