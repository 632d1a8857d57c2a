// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <string>

namespace drawercast::job {

/// The job's file text: every key in a fixed order, unknown ones after them as they came, short lists on one
/// line, so that two revisions can be compared line by line. A job read from this text equals `job`, and is
/// written as this text again.
std::string write_job(const Job& job);

} // namespace drawercast::job
