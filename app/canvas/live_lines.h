// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "layout/snap.h"

#include "canvas/blue_pencil.h"
#include "canvas/live_dimensions.h"
#include "canvas/view_map.h"
#include "canvas/word_room.h"

namespace drawercast::app {

/// What lines with words are drawn with.
struct LiveDesk {
    BluePencil& pencil;
    WordRoom& room;
    const ViewMap& view;
};

/// Arrows at both ends, the figure in the line where it has room there, else beside it.
void draw_dimension(const LiveDesk& desk, const LiveDimension& dimension, job::DisplayUnits units);

/// The line of a target, seen on free face only (`hidden`: boxes of pockets, px), ticks at its ends, its
/// reason in words. The grid needs none: it is drawn.
void draw_guide(const LiveDesk& desk, const layout::SnapAxis& axis, const std::vector<shape::Box>& hidden);

} // namespace drawercast::app
