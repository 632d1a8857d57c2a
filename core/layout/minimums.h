// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/foam.h"
#include "job/mold.h"
#include "layout/check.h"

namespace drawercast::layout {

/// How much foam a shop wants to leave standing, mm. Defaults by the foam's firmness are common practice
/// where they are round tens and twelves, our guess in between; each can be set in the job, and a set edge or
/// floor then holds everywhere, deep or heavy too.
struct Minimums {
    double wall_mm = 10;        ///< between two pockets, whatever their depth
    double wall_ratio = 4;      ///< and no slimmer than depth / ratio (a tall slim web folds)
    double edge_mm = 12;        ///< to the insert's edge
    double edge_deep_mm = 15;   ///< beside a hollow deeper than `deep_mm`
    double floor_mm = 12;       ///< under a hollow
    double floor_heavy_mm = 15; ///< under a level that is wide both ways, or under a heavy object

    double wall(double depth_mm) const;
    double edge(double depth_mm) const;
    double floor(bool wide_or_heavy) const { return wide_or_heavy ? floor_heavy_mm : floor_mm; }

    bool operator==(const Minimums&) const = default;
};

inline constexpr double deep_mm = 50;   ///< deeper than this counts as deep (our guess)
inline constexpr double wide_mm = 100;  ///< a level over this both ways is wide (our guess)
inline constexpr double heavy_g = 1000; ///< an object over this is heavy (common practice, no source)
inline constexpr double mend_below =
    0.6; ///< share of a minimum below which foam tears or does not fill (our guess)

/// A figure this close to its limit keeps it: below what anybody can cut or measure, above what set
/// operations round.
inline constexpr double slack_mm = 0.001;

/// The job's own minimums, the rest by firmness: wall 10, 11, 12 mm and a quarter, 1/3.5, a third of the
/// depth for firm, medium and soft foam.
Minimums minimums_of(const job::Minimums& own, job::Firmness firmness);

/// Whether `value` misses the minimum `limit`.
inline bool below(double value, double limit) { return value < limit - slack_mm; }

/// mend below 60 % of the minimum, else look.
inline Severity severity_below(double value, double limit) {
    return below(value, mend_below * limit) ? Severity::mend : Severity::look;
}

} // namespace drawercast::layout
