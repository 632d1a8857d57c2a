// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/gap.h"
#include "shape/segments.h"

namespace drawercast::shape {

/// The nearest places of two cores' boundaries.
struct NearSides {
    bool found = false; ///< some sides come within the limit
    double squared = 0; ///< of their distance; 0 where sides cross
    Vec a, b;
};

/// Nearest sides of two cores, no further apart than `limit_mm`. `box_a` is the box of a. Allocates nothing.
/// Whether one core lies inside the other is the caller's to ask.
NearSides nearest_sides(std::span<const Vec> a, const Box& box_a, std::span<const Vec> b, double limit_mm);

/// The gap of two outlines whose cores are nearest there: less both radii, and 0 where they reach each other.
Gap gap_from(const NearSides& near, double round_a, double round_b);

} // namespace drawercast::shape
