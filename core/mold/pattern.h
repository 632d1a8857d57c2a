// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_answers.h"

#include <optional>
#include <vector>

namespace drawercast::mold {

inline constexpr double first_from_corner_mm = 30; ///< of a closure, from the inner corner (common practice)
/// The same at a wall's butted end, into which the corner's own screws run 34 mm on the same center line.
inline constexpr double first_from_butt_mm = 45;

/// Where closures and stiffeners go on a box of these inside sizes.
struct PatternIn {
    double width_mm = 0;
    double depth_mm = 0;
    double wall_mm = 16;
    double spacing_mm = 65;
    int stiffeners = 0;
    job::Along along = job::Along::short_side;
    double stiffener_width_mm = 0;
    double head_radius_mm = 4;              ///< of a closure: it needs that much beside a stiffener
    std::vector<shape::Vec> keep_off{};     ///< points that no stiffener may cover …
    double stand_off_mm = 0;                ///< … nor come nearer to with its center line
    std::optional<job::BoxCorner> corner{}; ///< which walls end at a corner; absent: none does
    std::vector<shape::Vec> apart_from{}; ///< screws of the other edge of the walls, which meet in the wood …
    double apart_mm = 0;                  ///< … where they are nearer than that along a wall
    bool operator==(const PatternIn&) const = default;
};

/// Whether stiffeners stand along y, one beside the other in x.
bool stiffeners_along_y(const PatternIn& in);

/// Where they stand across: at i/(n + 1) of the opening; each moved as little as it takes to stand off what
/// must be kept off, by a third of their pitch at most (our guess). One that can't stays.
std::vector<double> stiffener_places(const PatternIn& in);
/// Whether all stand off.
bool stands_off(const PatternIn& in);

/// From plate edge to plate edge.
std::vector<StiffenerAt> stiffeners_of(const PatternIn& in);

/// On the walls' center lines, at equal pitch on each side; one at each end of each stiffener instead of
/// those it would cover. One that would meet what it must stand apart from is moved to the nearest place
/// along its wall that does not, by half the pitch at most; where there is none it stays. Counter-clockwise
/// from the front-left corner.
std::vector<ClosureAt> closures_of(const PatternIn& in);

/// The order in which to drive them: the middles of opposite sides, their ends, then halves, so that the
/// plate comes down evenly (common practice). Loosen in reverse.
std::vector<int> driving_order(const PatternIn& in, const std::vector<ClosureAt>& closures);

} // namespace drawercast::mold
