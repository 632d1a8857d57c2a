// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <string>

namespace drawercast::sheets {

/// The letter under which a table lists an object of this drawer: "a", "b", …, "aa", in the job's order of
/// those that have a pocket in it; empty for others. Small letters: capitals are zones, figures are checks.
std::string object_key(const job::Job& job, const job::Drawer& drawer, const std::string& object);

} // namespace drawercast::sheets
