// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "print/page.h"
#include "print/tiling.h"
#include "theme/palette.h"

#include <vector>

namespace drawercast::print {

/// A ring printed on two neighbors at the same point of the drawing: laid on each other they meet.
struct RingMark {
    Vec at_mm;
    bool upright_joint = false; ///< between left and right neighbors
    QString words;              ///< its coordinates, to measure from the datum
    bool operator==(const RingMark&) const = default;
};

/// Two rings on each edge that two printed tiles share, where their coordinates cover no words of `inks`
/// (drawing's (0, 0) at the origin) if there is such a place.
std::vector<RingMark> ring_marks(const Tiling& tiling, const sheets::Inks& inks, job::DisplayUnits units);

/// Strips along all joints, mm: what a word should not be cut by.
std::vector<Box> joint_strips(const Tiling& tiling, const Box& area_mm);

/// Joint lines of a tile and the rings in it, and in the part that is cut off which tile comes next. `by`
/// moves the drawing's inks to the page.
void write_joints(sheets::Inks& inks, const Tiling& tiling, const Tile& tile,
                  const std::vector<RingMark>& rings, Vec by, const theme::Theme& theme);

} // namespace drawercast::print
