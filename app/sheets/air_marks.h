// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/answer.h"
#include "job/job.h"

#include "sheets/sheet.h"
#include "sheets/table.h"

#include <vector>

/// Where air stays, vents and the pour, put on sheets of the mold.
namespace drawercast::sheets {

using MoldPen = Drafter<shape::InMold>;

/// Rings around the places where air stays, which words keep off.
void add_air_pockets(MoldPen& pen, const air::Answer& air);
/// The expansion at which each goes, and what it keeps where that is too much; only these where not
/// `all_named`.
void add_air_words(MoldPen& pen, const air::Answer& air, const job::Job& job, bool all_named,
                   const Box& within);

/// Each vent as a double ring, which words keep off.
void add_vents(MoldPen& pen, const std::vector<air::Vent>& vents);
/// Its number beside it: V1, V2 …; always on the same side, so that the tiles of a template rejoin.
void add_vent_numbers(MoldPen& pen, const std::vector<air::Vent>& vents);
/// Its number wherever there is room beside it `within`, and its place from the datum where that has room
/// too.
enum class VentWords { numbers, places };
void add_vent_words(MoldPen& pen, const std::vector<air::Vent>& vents, const job::Job& job, VentWords what,
                    const Box& within);

/// Where the numbers of the pours will stand: labels written before them keep off.
std::vector<Mark> kept_for_pours(const air::PourMap& map);
/// Numbered pours with their milliliters beside them, `within` the board.
void add_pour_map(MoldPen& pen, const air::PourMap& map, const job::Job& job, const Box& within);

/// Vents by number with their places from the datum, drills and what each is for.
Table vent_table(const job::Job& job, const std::vector<air::Vent>& vents);

} // namespace drawercast::sheets
