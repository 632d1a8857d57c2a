// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/shop.h"

#include <vector>

namespace drawercast::mold {

enum class Grain { face, edge }; ///< where a screw enters a board

/// Mean ultimate withdrawal of a wood screw from particleboard, N: K·√D·(L − D/3)^1.25·G², K = 41.1 in a face
/// and 31.8 in an edge; D shank, L threaded part that is in, mm; G oven-dry specific gravity. 0 where L ≤
/// D/3. Source: Wood Handbook (FPL-GTR-190, 2010), ch. 8, "Fastening of composite panels" (constants from
/// memory).
double withdrawal_n(Grain grain, double diameter_mm, double in_mm, double specific_gravity);

/// How far a screw must and may go into a wall: at least eight diameters, and five short of the wall's depth
/// (common practice).
struct Penetration {
    double least_mm = 0;
    double most_mm = 0;
    bool operator==(const Penetration&) const = default;
};
Penetration penetration_limits(double diameter_mm, double wall_height_mm);

/// What a closure goes through and into.
struct Joint {
    double through_mm = 0; ///< plate, and stiffener where there is one
    double wall_height_mm = 0;
    double specific_gravity = 0; ///< of the wall
    double below_mm = 0;         ///< base under the wall, and bearer where a rod goes through one
    bool operator==(const Joint&) const = default;
};

/// Length of a screw that is in the wall, mm; other kinds have none.
double in_wall_mm(const job::Closure& closure, const Joint& joint);
/// Least length of a rod of this joint, mm, from above its upper nut to below its lower one: of each nut, its
/// washer and two turns of thread it takes two diameters (our guess; ISO 4032's nut is 0.85, ISO 7089's
/// washer 0.2 of an M8, from memory).
double rod_length_mm(double diameter_mm, const Joint& joint);
bool fits(const job::Closure& closure, const Joint& joint); ///< clamps and straps always do

/// Least thickness of a wall for a closure, mm: a screw splits an edge under three diameters (common
/// practice); a rod's hole down through the wall leaves 4 on either side (our guess).
double least_wall_mm(const job::Closure& closure);

/// Mean ultimate pull of one closure, N: as stated, else by withdrawal from the wall's edge.
double capacity_n(const job::Closure& closure, const Joint& joint);

/// Radius that a closure's head presses on, mm: a screw's is its diameter (common practice).
double head_radius_mm(const job::Closure& closure);

double seconds_of(const job::Closure& closure, double shop_seconds);

/// Drills for a closure, of those at hand: through the plate the least that clears it by 0.3 mm, so that its
/// thread does not hold the plate off the wall; into the wall the one nearest to 85 % of a root of two thirds
/// (both common practice, no source). 0: none does, or not needed. A hole half as wide again as the closure
/// leaves its head nothing to press on, and a pilot under 0.4 or over 0.75 of a screw splits the wall or lets
/// it go (our guess): such drills are none.
struct Holes {
    double clearance_mm = 0;
    double pilot_mm = 0;
    bool operator==(const Holes&) const = default;
};
Holes wanted_holes(const job::Closure& closure); ///< 0: not needed
Holes holes_of(const job::Closure& closure, const std::vector<double>& drills_mm);

} // namespace drawercast::mold
