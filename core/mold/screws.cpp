// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/screws.h"

#include <algorithm>
#include <cmath>

namespace drawercast::mold {

namespace {

constexpr double clearance_mm = 0.3;
constexpr double pilot_share = 0.85 * 2 / 3;
constexpr double least_pilot_share = 0.4, most_pilot_share = 0.75;
constexpr double widest_hole_share = 1.5;
constexpr double edge_diameters = 3;
constexpr double beside_rod_mm = 4;
constexpr double nut_diameters = 2; ///< of a rod's end: nut, washer and two turns

} // namespace

double withdrawal_n(Grain grain, double diameter_mm, double in_mm, double specific_gravity) {
    const double held = in_mm - diameter_mm / 3; // the tip holds nothing
    if (held <= 0) return 0;
    const double constant = grain == Grain::face ? 41.1 : 31.8;
    return constant * std::sqrt(diameter_mm) * std::pow(held, 1.25) * specific_gravity * specific_gravity;
}

Penetration penetration_limits(double diameter_mm, double wall_height_mm) {
    return {8 * diameter_mm, wall_height_mm - 5};
}

double in_wall_mm(const job::Closure& closure, const Joint& joint) {
    return closure.kind == job::ClosureKind::screw ? closure.length_mm - joint.through_mm : 0;
}

double rod_length_mm(double diameter_mm, const Joint& joint) {
    return joint.through_mm + joint.wall_height_mm + joint.below_mm + 2 * nut_diameters * diameter_mm;
}

bool fits(const job::Closure& closure, const Joint& joint) {
    if (closure.kind == job::ClosureKind::rod)
        return closure.length_mm >= rod_length_mm(closure.diameter_mm, joint);
    if (closure.kind != job::ClosureKind::screw) return true;
    const Penetration limits = penetration_limits(closure.diameter_mm, joint.wall_height_mm);
    const double in = in_wall_mm(closure, joint);
    return in >= limits.least_mm && in <= limits.most_mm;
}

double least_wall_mm(const job::Closure& closure) {
    if (closure.kind == job::ClosureKind::screw) return edge_diameters * closure.diameter_mm;
    if (closure.kind == job::ClosureKind::rod) return closure.diameter_mm + 2 * beside_rod_mm;
    return 0;
}

double capacity_n(const job::Closure& closure, const Joint& joint) {
    if (closure.capacity_n) return *closure.capacity_n;
    return withdrawal_n(Grain::edge, closure.diameter_mm,
                        std::min(in_wall_mm(closure, joint), joint.wall_height_mm), joint.specific_gravity);
}

double head_radius_mm(const job::Closure& closure) {
    return closure.kind == job::ClosureKind::screw ? closure.diameter_mm : closure.diameter_mm / 2;
}

double seconds_of(const job::Closure& closure, double shop_seconds) {
    return closure.seconds.value_or(shop_seconds);
}

Holes wanted_holes(const job::Closure& closure) {
    const bool screw = closure.kind == job::ClosureKind::screw;
    if (!screw && closure.kind != job::ClosureKind::rod) return {};
    return {closure.diameter_mm + clearance_mm, screw ? pilot_share * closure.diameter_mm : 0};
}

Holes holes_of(const job::Closure& closure, const std::vector<double>& drills_mm) {
    Holes out;
    const Holes wanted = wanted_holes(closure);
    if (wanted.clearance_mm == 0) return out;
    const double d = closure.diameter_mm;
    for (const double drill : drills_mm)
        if (drill >= wanted.clearance_mm && drill <= widest_hole_share * d &&
            (out.clearance_mm == 0 || drill < out.clearance_mm))
            out.clearance_mm = drill;
    if (wanted.pilot_mm == 0) return out;
    const double best = wanted.pilot_mm;
    for (const double drill : drills_mm)
        if (drill >= least_pilot_share * d && drill <= most_pilot_share * d &&
            (out.pilot_mm == 0 || std::abs(drill - best) < std::abs(out.pilot_mm - best)))
            out.pilot_mm = drill;
    return out;
}

} // namespace drawercast::mold
