// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <string>

namespace drawercast::job {

/// The number of an object's next pocket: one more than any that is placed or that a look left as is, a mold
/// as built or a cast still speaks of.
int next_number(const Job& job, const std::string& object);

/// More pockets than objects would be foam cut for nothing: the object's count follows.
void raise_count(Job& job, const std::string& object);

} // namespace drawercast::job
