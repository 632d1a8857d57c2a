// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "layout/check.h"

#include <string>
#include <vector>

namespace drawercast::plan {

/// One way to put a check right by the smallest change of its kind, and the job that has it.
struct Mend {
    enum class Kind {
        move,           ///< the pocket, `by`
        shallower,      ///< the pocket's deepest levels, by amount_mm
        deeper,         ///< all the pocket's sunk levels, by amount_mm
        thicker_insert, ///< by amount_mm
        automatic_dose, ///< the overpack set by hand goes
    };
    Kind kind = Kind::move;
    std::string subject;  ///< the pocket; empty: the drawer or the dose
    shape::Vec by;        ///< of a move, drawer frame
    double amount_mm = 0; ///< how much is changed; of a move its length
    job::Job job;
};

/// The mends of a check of that drawer, the least change first; empty where there is none. Each was tried: in
/// its job the check is gone, no pocket that was moved has a wall or an edge to look at, and nothing else is
/// to mend that was not before. Locked pockets are not moved. Moves are looked for in rings of `move_step_mm`
/// up to `farthest_move_mm`, then shortened to a tenth of a millimeter.
std::vector<Mend> mends_for(const job::Job& job, const std::string& drawer, const layout::Check& check);

inline constexpr double move_step_mm = 0.5;
inline constexpr double farthest_move_mm = 60;

} // namespace drawercast::plan
