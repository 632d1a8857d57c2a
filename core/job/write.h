// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/job.h"

#include <string>

namespace drawercast::job {

/// The job's file text: every key in a fixed order, unknown ones after them as they came, short lists on one
/// line, so that two revisions can be compared line by line. A job read from this text equals `job`, and is
/// written as this text again.
std::string write_job(const Job& job);

/// The job's file text, once it has been read back and found equal: what a save writes, and what a form asks
/// before it takes typed values into a job. Else everything the reader has against it; of code "unsavable"
/// where it would read back as another job (lengths that are not grained).
ExpectedAll<std::string> checked_text(const Job& job);

} // namespace drawercast::job
