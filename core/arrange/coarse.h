// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

namespace drawercast::arrange {

/// The same outline with few corners, never smaller: corners are left out where the line without them passes
/// within a tolerance (Douglas and Peucker 1973), and the round grows by that tolerance. The tolerance is the
/// least of size/20,000 doubled until few enough corners stay; an outline with few corners stays as it is.
shape::Contour coarse(const shape::Contour& outline);

} // namespace drawercast::arrange
