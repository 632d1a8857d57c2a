// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/free_ids.h"
#include "job/job.h"
#include "shape/vec.h"

#include <optional>
#include <string>
#include <vector>

/// The acts of a maker as pure functions from a job to the next one. Ids that are not there change nothing.
/// Places are grained, turns end from 0 up to 360. Sizes a maker types into an object or a drawer come from
/// parse_length; whether a job made of them can be kept is asked of checked_text (write.h).
namespace drawercast::job {

using Subjects = std::vector<std::string>; ///< pockets, "i1#1"

// ---- pockets ----
Job moved(Job job, const Subjects& which, shape::Vec by);
/// Each pocket put at a pose of its own.
struct Placement {
    std::string subject;
    shape::Pose pose;
};
Job posed(Job job, const std::vector<Placement>& placements);
/// Turned as a group counter-clockwise about a point.
Job turned(Job job, const Subjects& which, double by_deg, shape::Vec about);
Job locked(Job job, const Subjects& which, bool lock);
Job removed(Job job, const Subjects& which);
/// A new pocket of an object; its number is one more than any that is there or that is spoken of.
/// `made` gets its subject. The object's count grows where more are placed than there were.
Job placed(Job job, const std::string& drawer, const std::string& object, const shape::Pose& pose,
           std::string* made = nullptr);
/// Copies of pockets, offset, notches and all; the copies' subjects in the order of `which`. Counts grow
/// where more are placed than there were.
Job duplicated(Job job, const Subjects& which, shape::Vec by, Subjects* made = nullptr);
Job with_notch(Job job, const std::string& subject, const Notch& notch);
/// The notch of that number put another way; unchanged where there is none.
Job with_notch_changed(Job job, const std::string& subject, std::size_t index, const Notch& notch);
Job without_notch(Job job, const std::string& subject, std::size_t index);
/// To another drawer, at the same place in it.
Job moved_to_drawer(Job job, const Subjects& which, const std::string& drawer);

// ---- objects ----
Job with_object(Job job, const Object& object);         ///< added, or replacing the one of the same id
Job with_objects(Job job, std::vector<Object> objects); ///< added, each under a free id; in this order
Job without_object(Job job, const std::string& id);     ///< and all its pockets
Job with_object_copied(Job job, const std::string& id, std::string* made = nullptr);

// ---- drawers and the rest ----
Job with_drawer(Job job, const Drawer& drawer);     ///< added, or replacing the one of the same id
Job without_drawer(Job job, const std::string& id); ///< and its pockets; its looks left as is too
Job with_left_as_is(Job job, LeftAsIs left); ///< sorted subjects; replaces the same drawer, code, subjects
Job without_left_as_is(Job job, const LeftAsIs& left);
Job in_units(Job job, DisplayUnits units);
Job with_overpack(Job job, std::optional<double> overpack); ///< of the foam; null: automatic
Job next_revision(Job job);

/// Where a pocket stands: its drawer and itself; null where it does not.
struct Found {
    const Drawer* drawer = nullptr;
    const Pocket* pocket = nullptr;
};
Found find_pocket(const Job& job, const std::string& subject);
/// Those of `which` that are there and not locked, in its order.
Subjects unlocked(const Job& job, const Subjects& which);
const Drawer* find_drawer(const Job& job, const std::string& id);

} // namespace drawercast::job
