// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "print/page.h"
#include "print/tiling.h"
#include "theme/palette.h"

namespace drawercast::print {

/// Joint lines and registration rings of a tile: at the same points of the drawing on both neighbors, each
/// with its coordinates, so that the rings meet and can be measured. `by` moves the drawing's inks to the
/// page.
void write_joints(sheets::Inks& inks, const Tiling& tiling, const Tile& tile, Vec by, job::DisplayUnits units,
                  const theme::Theme& theme);

/// Which tile comes next, outside each joined edge of the window.
void write_neighbors(sheets::Inks& inks, const Tiling& tiling, const Tile& tile, const Box& window,
                     const theme::Theme& theme);

} // namespace drawercast::print
