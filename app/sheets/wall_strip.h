// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "mold/plate_answers.h"
#include "stock/box.h"

#include "sheets/bench.h"

#include <vector>

/// The edges of the box's walls at true size, to drill by.
namespace drawercast::sheets {

/// Where the screws from below stand, from the wall's left end (of a side wall: its front end), mm.
std::vector<double> foot_holes_mm(const stock::Wall& wall);

struct TopHoles {
    std::vector<double> around_mm;
    std::vector<double> ends_mm; ///< of stiffeners: longer screws, maybe thicker ones
};
/// Likewise the plate's closures that are driven into the wall's top; none for rods, clamps and straps.
/// `inside`: the inner box, mold frame.
TopHoles top_holes(const stock::Wall& wall, const mold::PlateDesign& design, const Box& inside,
                   job::BoxCorner corner);

/// One edge with its holes and their distances from its left end; those of `ringed_mm` in a ring.
Sheet<OnBench> wall_strip(const job::Job& job, const stock::Wall& wall, double thickness_mm,
                          const std::vector<double>& holes_mm, const std::vector<double>& ringed_mm = {});

} // namespace drawercast::sheets
