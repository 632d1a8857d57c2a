// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

namespace drawercast::plan {

/// How many places in the molds of a job are too narrow for foam to flow through by itself, between two
/// blocks or a block and the box: the pairs that `slot-narrow` tells of, before any air is worked out. Only
/// where a shop asks for walls thinner than the usual ones.
int narrow_slots(const job::Job& job, const Plan& plan);

} // namespace drawercast::plan
