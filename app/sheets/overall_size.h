// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/say.h"

#include "sheets/edge_words.h"

namespace drawercast::sheets {

/// How far outside the edges of a box its dimensions stand, and where along their lines their figures.
struct SizeStands {
    double out_mm = 0;
    double out_px = template_dimension_px;
    double figure_at = template_figure_at;
};

/// Width and depth of `box`, in front of it and to its left; as a 1:1 template has them where nothing is
/// said.
template <class Frame>
void add_overall_size(Drafter<Frame>& pen, const Box& box, job::DisplayUnits units,
                      const SizeStands& stands = {}) {
    const auto& [out_mm, out_px, figure_at] = stands;
    pen.put(DimensionMark{box.min,
                          {box.max.x, box.min.y},
                          {{0, -out_mm}, {0, -out_px}},
                          plan::say_length_bare(box.width(), units),
                          figure_at});
    pen.put(DimensionMark{box.min,
                          {box.min.x, box.max.y},
                          {{-out_mm, 0}, {-out_px, 0}},
                          plan::say_length_bare(box.height(), units),
                          figure_at});
}

} // namespace drawercast::sheets
