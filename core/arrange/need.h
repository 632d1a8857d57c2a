// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <string>
#include <vector>

namespace drawercast::arrange {

/// What the objects that stand in drawers, and all that are not placed, take of the room there by area alone,
/// as parts of what the inserts have within their edges; 0 where they have none. About where more than 1 is
/// needed no arrangement gets all in.
struct Need {
    double objects = 0;    ///< as large as they are
    double with_fit = 0;   ///< as pockets
    double with_walls = 0; ///< half the wall of its depth about each hollow, as neighbors share it
};
Need need_of(const job::Job& job, const std::vector<std::string>& drawers);
Need need_of(const job::Job& job); ///< of all drawers

} // namespace drawercast::arrange
