// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/set_kernel.h"

#include <functional>

/// What stands between the raw set operations and everybody else.
namespace drawercast::shape {

/// The region as a set operation wants it: on the grid, cleaned; as it is where the grid would make it cross
/// itself. A Problem "geometry" where it is not valid either way.
Expected<Region> prepared(const Region& region);

/// A result as it leaves this folder: straight sides without corners, on the grid where that keeps it valid,
/// without slivers and slits that only the rounding to the grid made (mean width under two grid steps).
Region settled(const Region& raw);

/// Whether `main` can be the answer, checked with its complement (for unite: what both share; for share: a
/// without b; for subtract: what both share): validity, bounds of the area, and the identity of areas.
bool plausible(kernel::Operation operation, const Region& a, const Region& b, const Region& main,
               const Region& complement);

using RawOperation = std::function<std::optional<Region>(kernel::Operation, const Region&, const Region&)>;

/// One set operation: raw, checked, tried again with either operand shrunk by 1e-6 mm, else a Problem
/// "geometry".
Expected<Region> guarded(kernel::Operation operation, const Region& a, const Region& b,
                         const RawOperation& raw = kernel::apply);

Problem geometry_problem(Phrase what);

} // namespace drawercast::shape
