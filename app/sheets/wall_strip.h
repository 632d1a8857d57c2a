// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "mold/plate_answers.h"
#include "stock/box.h"

#include "sheets/bench.h"

#include <vector>

/// The edges of the box's walls at true size, to drill by.
namespace drawercast::sheets {

/// Where screws go into an edge of a wall, from its left end (of a side wall: its front end), mm.
struct WallHoles {
    std::vector<double> around_mm;
    std::vector<double> ends_mm; ///< of stiffeners or bearers: longer screws, maybe thicker ones
};
/// The closures of a plate (or the base, for its foot) that are driven into the wall; none for rods, clamps
/// and straps. `inside`: the inner box, mold frame.
WallHoles wall_holes(const stock::Wall& wall, const mold::PlateDesign& design, const Box& inside,
                     job::BoxCorner corner);

/// One edge with its holes and their distances from its left end; those of `ringed_mm` in a ring.
Sheet<OnBench> wall_strip(const job::Job& job, const stock::Wall& wall, double thickness_mm,
                          const std::vector<double>& holes_mm, const std::vector<double>& ringed_mm = {});

} // namespace drawercast::sheets
