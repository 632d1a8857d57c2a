// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <optional>
#include <string>
#include <vector>

namespace drawercast::plan {

/// What one foam would make of a job.
struct FoamBeside {
    job::Foam foam;
    bool of_job = false;  ///< the job's own
    double inserts_g = 0; ///< over all drawers with a dose
    double mixed_ml = 0;  ///< likewise
    double wall_mm = 0;   ///< that the shop wants beside the deepest pocket
    int mends = 0;        ///< in all drawers, those left as is aside
    int looks = 0;
    double foot_kpa = 0;         ///< the most an object presses on its floor; 0: none rests on foam
    double foot_most_kpa = 0;    ///< that it may (half the foam's stress at 25 %; our guess)
    std::string foot_object;     ///< its name
    double closed_kpa = 0;       ///< the most of all molds, as expected
    std::optional<double> price; ///< of the kits to buy; nothing: a drawer has no dose, or the foam no prices
};

/// The job in each of some foams, its own first; one of them that is the job's own is not repeated. Quick
/// answers: where air stays and the plate are left out.
std::vector<FoamBeside> foams_beside(const job::Job& job, const std::vector<job::Foam>& foams);

} // namespace drawercast::plan
