// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include <string>

namespace drawercast::subcommands {

/// What `check` prints: drawer by drawer a line of counts and a line for each check, then the job's own, then
/// keys of its file that are not known.
std::string check_report(const job::Job& job, const plan::Plan& plan);

} // namespace drawercast::subcommands
