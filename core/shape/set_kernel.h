// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/region.h"

#include <optional>
#include <string>

/// The set operations of the library behind this folder, raw: what they answer is not to be trusted before it
/// was checked (set_operations.cpp, offset.cpp). The one place that knows the library's types.
namespace drawercast::shape::kernel {

enum class Operation { unite, share, subtract };
enum class Join { round, miter };
inline constexpr double miter_limit = 2; ///< a miter's tip from its corner, in offsets

/// Why the region is not valid (a ring crosses itself, a hole lies outside …); nothing where it is.
std::optional<std::string> fault(const Region& region);

/// Without repeated points and spikes, and rings the right way round.
Region cleaned(const Region& region);

/// Nothing where the library gives up.
std::optional<Region> apply(Operation operation, const Region& a, const Region& b);

/// Moves the boundary outward by `by_mm` (inward where < 0). `points_per_circle` for round joins.
/// Nothing where the library gives up.
std::optional<Region> moved(const Region& region, double by_mm, Join join, std::size_t points_per_circle);

} // namespace drawercast::shape::kernel
