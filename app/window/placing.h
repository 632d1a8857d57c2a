// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "plan/plan.h"

#include <optional>

/// Arranging by hand: what the entries of the Place menu make of a job. Pure functions. Locked pockets stand
/// still, and pockets that could not be made (no outline) are left alone. Boxes are those of the finished
/// pockets, notches and all.
namespace drawercast::app::placing {

enum class Line { left, right, front, back, center_x, center_y };

/// The chosen pockets moved onto the line of the last one chosen, which stays.
job::Job aligned(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen, Line line);

enum class Axis { x, y };

/// The middles of three or more pockets an equal way apart; the two outermost stay.
job::Job distributed(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen,
                     Axis axis);

/// Equal walls between the pockets, and to the edges of the insert, along one axis: all of them move.
/// Unchanged where they do not fit beside each other.
job::Job with_equal_walls(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen,
                          Axis axis);

enum class Side { left, right, front, back };

/// The side of a pocket that is nearest to a point of the drawer.
Side nearest_side(const shape::Box& box, shape::Vec point);

/// A finger notch for a thumb and a finger, half inside the pocket, in the middle of a side; as deep as two
/// thirds of the pocket (common practice, no source). Unchanged where the pocket can't be found.
job::Job with_finger_notch(const job::Job& job, const plan::DrawerPlan& drawer, const std::string& subject,
                           Side side);

/// The notch of a pocket that is nearest to a point of the drawer; nothing where it has none.
std::optional<std::size_t> nearest_notch(const job::Job& job, const std::string& subject, shape::Vec point);

/// Where a new pocket of an object goes: the first place, from the back left in rows, that keeps the shop's
/// walls to all others; the insert's middle where there is none.
job::Job placed_where_free(const job::Job& job, const plan::DrawerPlan& drawer, const std::string& object,
                           std::string* made = nullptr);

} // namespace drawercast::app::placing
