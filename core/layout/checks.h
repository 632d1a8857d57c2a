// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "layout/check.h"
#include "layout/insert.h"
#include "layout/minimums.h"
#include "layout/pocket.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

/// The checks of a layout, one question each. Distances are exact minima between outlines; points are in the
/// drawer frame. Each function gives at most one check of a code for its pocket or pair: the worst, by value
/// over limit.
namespace drawercast::layout {

/// What the pockets of one drawer are measured against.
struct DrawerLimits {
    std::shared_ptr<const Insert> insert; ///< null where there is none: then nothing is said of its edges
    Minimums minimums;
    double insert_mm = 0;
    double clear_height_mm = 0; ///< over the drawer's bottom
    double load_kg = 0;
    double stress25_kpa = 0; ///< of the foam
    bool operator==(const DrawerLimits&) const = default;
};
DrawerLimits limits_of(const job::Job& job, const job::Drawer& drawer, std::shared_ptr<const Insert> insert);

/// What the checks know of an object besides its pocket.
struct ObjectFacts {
    double mass_g = 0;
    double height_mm = 0;
    double foot_mm2 =
        0; ///< what it rests on foam with: its deepest level (all that deep), as given; 0: stands through
    std::vector<bool> wide; ///< of each level: over `wide_mm` both ways, as given
    bool operator==(const ObjectFacts&) const = default;
};
ObjectFacts facts_of(const job::Object& object);

/// What an object weighs on the foam below it, W/A; 0: it stands through. And what is let pass: half of the
/// stress that presses the foam in by a quarter (our guess).
double foot_kpa(const ObjectFacts& object);
double foot_most_kpa(double stress25_kpa);

/// wall-thin, or overlap, between the hollows of two pockets; the same whichever comes first.
std::optional<Check> pair_check(const PlacedPocket& a, const PlacedPocket& b, const Minimums& minimums);

/// edge-thin, outside, obstructed: the pocket against the insert's edge and the drawer's obstructions.
void add_edge_checks(const PlacedPocket& pocket, const Insert& insert, const Minimums& minimums,
                     std::vector<Check>& checks);

/// floor-thin, too-high, foot-pressure: the pocket and its object against heights and foam.
void add_height_checks(const PlacedPocket& pocket, const ObjectFacts& object, const DrawerLimits& limits,
                       std::vector<Check>& checks);

/// notch-apart, and the wall that an apart notch leaves to its own pocket (wall-thin of one subject).
void add_notch_checks(const PlacedPocket& pocket, const Minimums& minimums, std::vector<Check>& checks);

/// All of the above for one pocket by itself.
void add_pocket_checks(const PlacedPocket& pocket, const ObjectFacts& object, const DrawerLimits& limits,
                       std::vector<Check>& checks);

/// overload (the objects' masses alone; the insert comes on top) and an insert higher than the drawer.
void add_drawer_checks(double objects_g, const DrawerLimits& limits, std::vector<Check>& checks);

/// not-placed: an object with fewer pockets in all drawers than its count.
void add_not_placed(const job::Job& job, std::vector<Check>& checks);

/// The check for what could not be made at all: "fit-vanishes", "insert-split", else "geometry". Always mend.
Check check_of(const Problem& problem, std::vector<std::string> subjects);

/// A pocket and what is known of its object.
struct Standing {
    std::shared_ptr<const PlacedPocket> pocket;
    std::shared_ptr<const ObjectFacts> object;
};

/// Every check of one drawer's layout from scratch, sorted; each pair is looked at. The measure of Recheck.
std::vector<Check> layout_checks(const std::vector<Standing>& pockets, const DrawerLimits& limits);

} // namespace drawercast::layout
