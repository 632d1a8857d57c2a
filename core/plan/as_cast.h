// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <optional>
#include <string>
#include <vector>

/// What casts taught: each beside its plan, those of one foam together, and what may be reckoned with after
/// them. The foam's rise is never among it: a closed mold forces the volume, only an open cup shows the rise.
namespace drawercast::plan {

/// What one cast shows; absent: not measured, or the weighings can't tell it.
struct CastFigures {
    std::optional<double> wasted_g;       ///< mixed less insert, trimmings and plugs; below 0: weighed wrong
    std::optional<double> bucket_left_ml; ///< of it, liquid in each bucket
    std::optional<double> plugs_ml;       ///< foam out of the vents, at the density it has in the mold
    std::optional<double> viscosity_pa_s; ///< at which that much comes out
    std::optional<double> shrinkage;      ///< linear
    std::optional<double> closed_kpa;     ///< pressure of all that stayed and came out, by its mass
    std::optional<double> wider_mm;       ///< pockets, in the mean
    bool operator==(const CastFigures&) const = default;
};

/// Liquid by mass over the foam's mixed density; foam by the insert's mass over what the mold holds. What
/// leaves unpegged vents goes with one over the viscosity (air/squeeze.h), so the viscosity is the one
/// reckoned with then times planned over measured plugs: only where the vents stayed open until the foam
/// stood. Shrinkage from a length before and after.
CastFigures cast_figures(const job::Job& job, const DrawerPlan& drawer, const job::Cast& cast);

/// A figure over several casts.
struct Spread {
    int count = 0;
    double mean = 0;
    double deviation = 0; ///< standard deviation (n − 1); 0 of one
    bool operator==(const Spread&) const = default;
};
/// Absent where there is none.
std::optional<Spread> spread_of(const std::vector<double>& values);

/// What the casts of the job's foam say together; absent: none measured it, or its mean is nothing a job may
/// hold.
struct Calibration {
    std::optional<Spread> bucket_left_ml;
    std::optional<Spread> viscosity_pa_s;
    std::optional<Spread> shrinkage;
    std::optional<Spread> wider_mm; ///< shown, never taken: fits belong to objects
    bool operator==(const Calibration&) const = default;
};
Calibration calibration_of(const job::Job& job, const Plan& plan);

/// The parts of a calibration that the maker asks for.
struct Wanted {
    bool bucket_left = false;
    bool viscosity = false;
    bool shrinkage = false;
    bool operator==(const Wanted&) const = default;
};
/// The means in place of what was reckoned with; rounded to 1 mL, three digits, and 0.00001.
job::Job with_calibration(job::Job job, const Calibration& calibration, const Wanted& wanted);

/// A record to fill in: the drawer, its foam, and what was reckoned with when it was poured.
job::Cast blank_cast(const job::Job& job, const DrawerPlan& drawer, const std::string& day);

/// What one mold has been through.
struct MoldLog {
    int casts = 0;
    double wax_g = 0;
    double clay_g = 0;
    int on_these_holes = 0; ///< casts since the closures' holes were shifted last
    bool operator==(const MoldLog&) const = default;
};
MoldLog mold_log(const std::vector<job::Cast>& casts, const std::string& drawer);

/// Screws in edges of board hold no more after 3 to 5 drives (our guess).
inline constexpr int holes_wear_from = 3;

} // namespace drawercast::plan
