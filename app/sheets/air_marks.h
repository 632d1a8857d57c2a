// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "air/answer.h"
#include "sheets/sheet.h"
#include "sheets/table.h"

#include <optional>

/// Where air stays, vents and the pour, put on sheets of the mold.
namespace drawercast::sheets {

using MoldPen = Drafter<shape::InMold>;

/// Lines of the expansion at which the foam arrives, with their figures.
void add_arrival(MoldPen& pen, const air::AirMap& map);

/// Rings around the places where air stays, with the expansion at which it goes; those that keep too much are
/// named; the others only where `all_named`.
void add_air_pockets(MoldPen& pen, const air::Answer& air, const job::Job& job, bool all_named);

/// Each vent as a double ring with its number: V1, V2 …; with its place from the datum where the
/// width of the box is told, within which the words stay.
void add_vents(MoldPen& pen, const std::vector<air::Vent>& vents, const job::Job& job,
               std::optional<double> placed_within_mm);

/// Numbered pours with their milliliters.
void add_pour_map(MoldPen& pen, const air::PourMap& map, const job::Job& job);

/// Vents by number with their places from the datum, drills and what each is for.
Table vent_table(const job::Job& job, const std::vector<air::Vent>& vents);

} // namespace drawercast::sheets
