// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/region.h"

namespace drawercast::shape {

/// All points within `by_mm` ≥ 0 of the outline. Where the outline is convex this is the same core with a
/// larger radius (traced in closed form), else a checked offset. On the grid.
Expected<Region> dilated(const Contour& contour, double by_mm);

/// The outline moved outward by `by_mm` (inward where < 0) as one outline again: opening corners become
/// round, closing ones stay sharp. Exact wherever no far sides meet. Refused with code "outline-vanishes"
/// where nothing is left, more than one piece, or an island within.
Expected<Contour> offset_kept(const Contour& contour, double by_mm);

} // namespace drawercast::shape
