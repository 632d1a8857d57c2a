// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/shop.h"

#include <optional>
#include <vector>

/// Tubes that make round blocks.
namespace drawercast::stock {

/// Drain pipes: outside diameters 32, 40, 50, 75, 90, 110 and 125 of EN 1451-1; walls from memory, prices
/// invented.
const std::vector<job::Tube>& usual_tubes();
/// What the shop has: its own list, or the usual ones where it has none.
const std::vector<job::Tube>& tubes_of(const job::Shop& shop);

struct TubeUse {
    job::Tube tube;
    double wrap_mm = 0; ///< tape or card on the radius, up to the block's size
    bool operator==(const TubeUse&) const = default;
};

inline constexpr double most_wrap_mm = 2; ///< more is no longer round (our guess)

/// The tube that needs least wrap to become `diameter_mm`, at hand before others; none that is larger.
std::optional<TubeUse> tube_for(double diameter_mm, const std::vector<job::Tube>& tubes);

} // namespace drawercast::stock
