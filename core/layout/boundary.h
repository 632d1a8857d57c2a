// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <vector>

namespace drawercast::layout {

/// A short piece of an outline's boundary.
struct BoundaryPiece {
    shape::Vec middle;
    shape::Vec outward; ///< unit normal at the middle
    double mm = 0;      ///< length along the boundary
};

/// The boundary in pieces of at most `step_mm`. Exact for convex cores, round or sharp: arcs keep their own
/// normals, which chords would tilt; others by their traced chords.
std::vector<BoundaryPiece> boundary_of(const shape::Contour& contour, double step_mm);

} // namespace drawercast::layout
