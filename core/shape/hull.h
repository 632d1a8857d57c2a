// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

namespace drawercast::shape {

/// Counter-clockwise convex hull of points in any order, without points on its sides; from the leftmost one,
/// of several the one furthest in front. Source: Andrew (1979), Another efficient algorithm for convex hulls
/// in two dimensions, Information Processing Letters 9, 216–219.
Ring hull_of(Ring points);

} // namespace drawercast::shape
