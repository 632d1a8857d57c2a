// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <optional>

namespace drawercast::shape {

/// A mirror-symmetric shape that holds the whole of an outline: quicker to draw on board and cut twice from a
/// folded pattern.
struct SymmetricShape {
    Polygon polygon;     ///< where the outline is
    double more_mm2 = 0; ///< area beyond the outline's own
    double reach_mm = 0; ///< how far it reaches past the outline at most
    bool operator==(const SymmetricShape&) const = default;
};

/// The outline and its mirror picture united, about the axis through the centroid for which the two share the
/// most (every 15 degrees tried, the best one refined to 0.02 by golden section). Nothing where they share
/// less than nine tenths: such an outline has no axis to speak of.
std::optional<SymmetricShape> symmetric_shape(const Contour& contour);

} // namespace drawercast::shape
