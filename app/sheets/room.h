// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/path.h"

#include <optional>
#include <vector>

/// Finding room on a drawing, in device units.
namespace drawercast::sheets {

/// Parallel lines at `pitch` through the area of `rings` (even-odd), one of them through `anchor`; turned
/// counter-clockwise as seen (y down).
Path hatching(const std::vector<shape::Ring>& rings, Vec anchor, double turn_deg, double pitch);

/// Whether the segment passes through the box.
bool segment_meets(Vec a, Vec b, const Box& box);

/// Whether any side of the rings passes through the box.
bool crosses(const std::vector<shape::Ring>& rings, const Box& box);

/// The middle of a box of `size` that lies inside `within` and clear of all `avoid`; the one nearest to the
/// middle of `within` among a fixed set of places.
std::optional<Vec> room_inside(const std::vector<shape::Ring>& within,
                               const std::vector<std::vector<shape::Ring>>& avoid, Vec size);

} // namespace drawercast::sheets
