// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "capture/measure.h"

namespace drawercast::capture {

/// The outline that is seen as `seen` (mm, the flat picture's frame, simple). What stands at height z is seen
/// enlarged by d/(d − z) about the camera's foot (intercept theorem). Where only the widest edge is seen,
/// that is taken out everywhere. Of upright walls the top is seen on the far side and the base on the near
/// one: the outline is what both leave, exact for convex ones. Refuses what the set operations refuse.
Expected<shape::Ring> without_parallax(const shape::Ring& seen, const Camera& camera, double height_mm,
                                       Walls walls);

/// How far an uncertain camera distance moves the farthest point, one standard deviation, mm.
double parallax_doubt(const shape::Ring& seen, const Camera& camera, double height_mm);

} // namespace drawercast::capture
