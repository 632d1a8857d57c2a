// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "plan/plan.h"

#include "forms/copy_order.h"
#include "window/placing.h"

#include <optional>
#include <string>

/// More of arranging by hand, under the same rules as placing.h.
namespace drawercast::app::placing {

/// Two pockets change places: the middles of their boxes do, each keeps its turn. Unchanged unless exactly
/// two free ones are chosen.
job::Job swapped(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen);

/// Columns and rows of one pocket, which stays where it is; `made` gets the others, row by row.
job::Job with_copies(const job::Job& job, const plan::DrawerPlan& drawer, const std::string& subject,
                     const CopyOrder& order, job::Subjects* made = nullptr);

/// The chosen pockets moved together so that the left or front edge of the box around them lies at `edge_mm`
/// of the drawer. Unchanged where one of them is locked.
job::Job put_at(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen, Axis axis,
                double edge_mm);

/// The chosen pockets moved into another drawer, whose plan before that is `there`: at the same place, or by
/// the least that brings the box around them inside the insert with its edge `edge_mm` wide; into the middle
/// of what is too small for them. `from` is the plan of the drawer they are in.
job::Job into_drawer(const job::Job& job, const plan::DrawerPlan& from, const job::Subjects& chosen,
                     const plan::DrawerPlan& there, double edge_mm);

/// Each of the chosen pockets turned to that angle about the middle of its own box; locked ones stay.
job::Job turned_to(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen,
                   double turn_deg);

/// Each of the chosen pockets moved by the least that brings its left and front edge onto the grid; locked
/// ones stay.
job::Job onto_grid(const job::Job& job, const plan::DrawerPlan& drawer, const job::Subjects& chosen,
                   double grid_mm);

/// The angle all of the pockets have; nothing where they differ.
std::optional<double> turn_of(const job::Job& job, const job::Subjects& chosen);

/// Another object in each of the chosen pockets' places, its levels' middle where theirs was, turned alike;
/// finger notches stay at the same share of their side, no deeper than the new pocket. Locked ones stay as
/// they are. `made` gets the new subjects.
job::Job with_object_replaced(const job::Job& job, const plan::DrawerPlan& drawer,
                              const job::Subjects& chosen, const std::string& object,
                              job::Subjects* made = nullptr);

} // namespace drawercast::app::placing
