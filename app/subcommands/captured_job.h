// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "subcommands/capture_options.h"

#include <string>
#include <string_view>

namespace drawercast::subcommands {

/// What was measured in a picture, as a job to go on with.
struct Captured {
    job::Job job;       ///< a new one; each outline an object, largest first
    std::string report; ///< a line for each, and where the camera was
};

/// Measures a picture file. What core/capture refuses is refused here in its words.
Expected<Captured> captured_job(std::string_view picture, const CaptureIn& in, const std::string& title);

} // namespace drawercast::subcommands
