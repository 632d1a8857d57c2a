// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/fields.h"
#include "job/job.h"

/// The parts of a job, each read by a function of its own. Problems go to the reading; what can't be read
/// stays default.
namespace drawercast::job {

Board read_board(Reading& reading, JsonValue at);
Stiffener read_stiffener(Reading& reading, JsonValue at);
Closure read_closure(Reading& reading, JsonValue at);
Tube read_tube(Reading& reading, JsonValue at);
SupplyPack read_supply(Reading& reading, JsonValue at);
Shop read_shop(Reading& reading, JsonValue at);
Foam read_foam(Reading& reading, JsonValue at);
Mold read_mold(Reading& reading, JsonValue at);
Minimums read_minimums(Reading& reading, JsonValue at);
Object read_object(Reading& reading, JsonValue at);
Drawer read_drawer(Reading& reading, JsonValue at);
AsBuilt read_as_built(Reading& reading, JsonValue at);
Cast read_cast(Reading& reading, JsonValue at);
Mark read_mark(Reading& reading, JsonValue at);
LeftAsIs read_left_as_is(Reading& reading, JsonValue at);

} // namespace drawercast::job
