// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casting/footprint.h"
#include "casting/layers.h"
#include "layout/pocket.h"

#include <span>
#include <vector>

/// The blocks of one pocket, cut level by level; in the object's own plane, finished sizes. Heights over the
/// board are depths below the insert's face.
namespace drawercast::casting {

using FormCut = layout::Cut<shape::InObject>;

inline constexpr double block_sagitta_mm =
    0.002; ///< chords of a block's arcs; their area is the arcs' all the same
inline constexpr double clay_sagitta_mm = 0.02; ///< chords of the clay's arcs

/// Height of a cut's block: its depth, but never over the insert's thickness.
double height_of(const FormCut& cut, double insert_mm);

/// Half the width of a lying round's block at `height_mm`: full up to the axis, then along the circle.
double half_width(const layout::Round& round, double height_mm);

/// Plan of what stands at `height_mm`.
Footprint section_at(std::span<const FormCut> cuts, double insert_mm, double height_mm);

/// All that the clay of radius `fillet_mm` and its blocks cover at `height_mm`; above a fillet, its block's
/// foot. A block lower than the radius has a fillet as high as itself.
Footprint clay_at(std::span<const FormCut> cuts, double insert_mm, double fillet_mm, double height_mm);

/// Plan area of the union of the blocks at the board, mm²; the outlines' own where they do not overlap.
double foot_area(std::span<const FormCut> cuts);

/// The union of the blocks. Closed forms where they do not overlap, lying rounds included (a·D·L + πD²L/8, or
/// a segment of the circle); else slabs between all heights, rounds in slices.
Layers layers_of(std::span<const FormCut> cuts, double insert_mm);

/// Heights at which the union's plan may jump or starts to narrow, ascending, 0 first; where a round narrows,
/// slices fine enough for its volume to about 1e-6.
std::vector<double> slice_heights(std::span<const FormCut> cuts, double insert_mm);

} // namespace drawercast::casting
