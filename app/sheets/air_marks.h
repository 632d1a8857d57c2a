// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "air/answer.h"
#include "sheets/sheet.h"
#include "sheets/table.h"

#include <vector>

/// Where air stays, vents and the pour, put on sheets of the mold.
namespace drawercast::sheets {

using MoldPen = Drafter<shape::InMold>;

/// Lines of the expansion at which the foam arrives, with their figures.
void add_arrival(MoldPen& pen, const air::AirMap& map);

/// Rings around the places where air stays, with the expansion at which it goes; those that keep too much are
/// named; the others only where `all_named`.
void add_air_pockets(MoldPen& pen, const air::Answer& air, const job::Job& job, bool all_named);

/// On which side of each vent its number and its place from the datum stand, so that they cover neither each
/// other nor vents, nor what is in `keep`, and stay within `within`, where that can be. For a sheet reduced
/// to about a quarter.
struct VentWords {
    bool left = false;
    bool above = false; ///< the place over the number, not under it
    Box room;           ///< what both take
};
std::vector<VentWords> vent_words(const std::vector<air::Vent>& vents, const Box& within,
                                  const std::vector<Box>& keep);

/// Each vent as a double ring with its number: V1, V2 …; where there are `words` for it, with its place too.
void add_vents(MoldPen& pen, const std::vector<air::Vent>& vents, const job::Job& job,
               const std::vector<VentWords>& words);

/// Numbered pours with their milliliters beside them, on the side that is within `width_mm`.
void add_pour_map(MoldPen& pen, const air::PourMap& map, const job::Job& job, double width_mm);

/// Vents by number with their places from the datum, drills and what each is for.
Table vent_table(const job::Job& job, const std::vector<air::Vent>& vents);

} // namespace drawercast::sheets
