// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include <cstddef>
#include <vector>

namespace drawercast::capture {

struct SheetSize {
    double width_mm = 210; ///< upright
    double height_mm = 297;
    bool operator==(const SheetSize&) const = default;
};
inline constexpr SheetSize sheet_a4{210, 297};         // ISO 216
inline constexpr SheetSize sheet_letter{215.9, 279.4}; // ASME Y14.1, size A

/// A printed mark: a black square on its tip with a round white hole; the first one has a black dot in the
/// hole and says which way round the sheet lies. The middle of the hole is what is measured.
inline constexpr double target_tip_mm = 8;    ///< middle to tip
inline constexpr double target_hole_mm = 4;   ///< radius
inline constexpr double target_dot_mm = 1.8;  ///< radius, first target only
inline constexpr double target_inset_mm = 14; ///< middle to the sheet's edges

/// Objects are laid inside a field this far from the sheet's edges.
inline constexpr double field_inset_mm = 25;

/// The middles of the ten targets in mm, x to the right and y down from the sheet's upper left corner: the
/// four corners clockwise, the first one with the dot; then the middles of the upper and lower side, and two
/// on each long side. Four would give the perspective; the others show the lens's distortion and whether it
/// lies flat.
std::vector<shape::Vec> target_places(SheetSize sheet);

/// Whether target `index` has the dot: the first one, and on the Letter sheet the middle of the upper side
/// too. Without it one paper seen would pass for the other, stretched: a homography takes any stretch.
bool target_dotted(SheetSize sheet, std::size_t index);

} // namespace drawercast::capture
