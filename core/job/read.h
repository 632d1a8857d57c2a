// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/job.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace drawercast::job {

/// The job a file's text holds. Everything wrong with it is reported at once, each with JSON pointer, line
/// and column; nothing is guessed: a job with a problem is not read. Keys left out take the default, keys
/// this version does not know are kept as they are. A newer version of the format is refused before anything
/// else is looked at. Never throws, and ends in bounded time and memory whatever the bytes.
ExpectedAll<Job> read_job(std::string_view text);

/// Keys that were kept but not used, as a slip of the pen leaves them.
struct UnknownKeys {
    std::vector<std::string>
        paths;            ///< "drawers[0].thickness_mm", in the order of the file, a hundred at most
    std::size_t more = 0; ///< beyond them
};

/// Those of a job's text; none of a text that is no job.
UnknownKeys unknown_keys(std::string_view text);

} // namespace drawercast::job
