// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "air/pour_map.h"
#include "casting/answers.h"
#include "job/job.h"

#include "sheets/sheet.h"
#include "sheets/table.h"

namespace drawercast::sheets {

/// washed: to look at, in wood and hatching. lines_only: to trace and drill by, at true size.
enum class Finish { washed, lines_only };

/// The pattern board from above, mirrored and enlarged as the mold needs it: sealed outlines of the blocks
/// with number, name and height, center marks, clay line, two screw points each, fillers, datum at the box's
/// front-left inner corner.
Sheet<shape::InMold> pattern_board(const job::Job& job, const casting::PatternBoard& board, Finish finish);

/// The board washed, with its pours: where, in which order and how much.
Sheet<shape::InMold> pour_board(const job::Job& job, const casting::PatternBoard& board,
                                const air::PourMap& pours);

/// Whether a check speaks of the board: of floors, slots and channels, not of the plate above them.
bool lies_on_board(const layout::Check& check);
/// Those of them that have a place, with the numbers they have in the list of the drawer's checks.
void add_board_checks(Sheet<shape::InMold>& sheet, const job::Job& job,
                      const std::vector<layout::Check>& checks);

/// Blocks and fillers by number with heights and the places of their centers and screws, from the datum.
Table block_table(const job::Job& job, const casting::PatternBoard& board);

} // namespace drawercast::sheets
