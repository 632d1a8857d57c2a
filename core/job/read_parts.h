// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/fields.h"
#include "job/job.h"

/// The parts of a job, each read by a function of its own. Problems go to the reading; what can't be read
/// stays default.
namespace drawercast::job {

Board read_board(Reading& reading, const Spot& spot);
Stiffener read_stiffener(Reading& reading, const Spot& spot);
Closure read_closure(Reading& reading, const Spot& spot);
Shop read_shop(Reading& reading, const Spot& spot);
Foam read_foam(Reading& reading, const Spot& spot);
Mold read_mold(Reading& reading, const Spot& spot);
Minimums read_minimums(Reading& reading, const Spot& spot);
Object read_object(Reading& reading, const Spot& spot);
Drawer read_drawer(Reading& reading, const Spot& spot);
LeftAsIs read_left_as_is(Reading& reading, const Spot& spot);

} // namespace drawercast::job
