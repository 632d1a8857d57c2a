// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/gap.h"

namespace drawercast::shape {

/// How far the boundary of the sharp ring `inner` gets outside the sharp ring `outer`, to 1e-6 mm: minus that
/// distance and its two ends; 0 where no part of the boundary is outside. For outers that are not convex,
/// where the furthest point need not be a corner.
Gap stick_out(const Contour& inner, const Contour& outer);

} // namespace drawercast::shape
