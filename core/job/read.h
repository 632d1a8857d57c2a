// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/job.h"

#include <string_view>

namespace drawercast::job {

/// The job a file's text holds. Everything wrong with it is reported at once, each with JSON pointer, line
/// and column; nothing is guessed: a job with a problem is not read. Keys left out take the default, keys
/// this version does not know are kept as they are. A newer version of the format is refused before anything
/// else is looked at. Never throws, and ends in bounded time and memory whatever the bytes.
ExpectedAll<Job> read_job(std::string_view text);

} // namespace drawercast::job
