// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/shop.h"
#include "mold/plate_element.h"
#include "mold/plate_system.h"

#include <vector>

namespace drawercast::mold {

/// A stiffener as a line beam that bends and shears.
struct BeamSection {
    double bending_nmm2 = 0;                   ///< EI that it adds to the plate's own
    double shear_n = 0;                        ///< 5/6·G·A with G = E/15 (along the grain; common practice)
    double stress_by_curvature_n_mm = 0;       ///< stress at its worst fiber for a curvature of 1/mm
    double plate_stress_by_curvature_n_mm = 0; ///< at the plate's far face along it, of one glued on; else 0
    bool operator==(const BeamSection&) const = default;
};

/// Loose: the piece alone, sliding on the plate. Glued: the transformed section of the piece and a strip of
/// plate `strip_mm` wide, less that strip's own bending, which the plate does already. A strip is a quarter
/// of the span and no wider than the pitch of the pieces (common practice, no source).
BeamSection beam_section(const job::Stiffener& piece, bool glued, const PlateSection& plate, double strip_mm);

/// Stiffness between the lifts of the beam's nodes, its slopes condensed, N/mm. Elements of Timoshenko's
/// beam. Source: Przemieniecki (1968), Theory of Matrix Structural Analysis, §5.6.
Square beam_stiffness(const BeamSection& section, const std::vector<double>& at_mm);

/// Greatest moment along it, N·mm, where its nodes lift like this.
double beam_moment(const BeamSection& section, const std::vector<double>& at_mm,
                   const std::vector<double>& lift_mm);

} // namespace drawercast::mold
