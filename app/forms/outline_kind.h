// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/object.h"

#include <optional>
#include <variant>
#include <vector>

namespace drawercast::app {

/// The kinds of outline a maker chooses from; a rectangle with a corner radius is a kind of its own in a
/// form.
enum class OutlineKind { rectangle, rounded, circle, capsule, free, lying };

/// What an outline is given by: an outline, or the cylinders of a lying round.
using Outline = std::variant<shape::Given, std::vector<job::Cylinder>>;

OutlineKind kind_of(const Outline& outline);

/// The sizes that the kinds other than free and lying share, so that they stay when the kind is changed.
struct OutlineSizes {
    std::optional<double> length_mm; ///< along x; a circle's diameter
    std::optional<double> width_mm;
    std::optional<double> corner_mm;
};
OutlineSizes sizes_of(const Outline& outline);
std::optional<shape::Given> with_sizes(OutlineKind kind, const OutlineSizes& sizes);

/// The same outline by its corners and arcs, to start a free outline from; of a lying round its shadow.
shape::Polygon corners_of(const Outline& outline);

} // namespace drawercast::app
