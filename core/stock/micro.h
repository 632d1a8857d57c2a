// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstdint>

namespace drawercast::stock {

/// Lengths inside the cutting searches are whole micrometers: sums are exact, and a fit is never a matter of
/// rounding.
using Micro = std::int64_t;

inline constexpr double micro_per_mm = 1000;

/// What a piece takes up: never less than it is (but for noise under a nanometer).
inline Micro micro_of_piece(double mm) { return static_cast<Micro>(std::ceil(mm * micro_per_mm - 1e-3)); }
/// What stock offers: never more than there is.
inline Micro micro_of_stock(double mm) { return static_cast<Micro>(std::floor(mm * micro_per_mm + 1e-3)); }
inline double mm_of(Micro micro) { return static_cast<double>(micro) / micro_per_mm; }

} // namespace drawercast::stock
