// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_answers.h"
#include "mold/plate_held.h"

#include <limits>
#include <vector>

namespace drawercast::mold {

/// A design on its box, for 1 kPa of foam; everything grows with the pressure in proportion.
struct Trial {
    double bow_mm = 0;
    shape::Vec bow_at;
    double gap_mm = 0;
    double stress_mpa = 0;
    double stiffener_stress_mpa = 0;
    std::vector<double> pull_n; ///< of each closure of the design
    LiftField lift;
    bool cut_short = false; ///< the gap alone was too much: only it is known, and the lift with soft closures
};

/// Three solves: closures as stiff as stated for bow and stress, half as stiff for the gap, twice as stiff
/// for their pull (our guess of how far a screw's stiffness may lie from what is stated). The gap comes
/// first: one over `most_gap_mm` needs no more. `like`: how a like plate lies, on any mesh; then it is sooner
/// known where this one rests.
Trial trial_of(const PlateOnBox& box, const PlateDesign& design,
               double most_gap_mm = std::numeric_limits<double>::infinity(), const LiftField& like = {});

PlateSection section_of(const job::Board& board);

} // namespace drawercast::mold
