// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "job/job.h"

#include "subcommands/command_line.h"

namespace drawercast::subcommands {

struct ArrangeReport {
    job::Job job;     ///< with what found room
    std::string text; ///< what was placed, line by line
    bool all = true;  ///< everything found room
};

/// Arranges as the command says. A Problem of code "usage" where there is no such drawer.
Expected<ArrangeReport> arrange_report(const Command& command, const job::Job& job);

} // namespace drawercast::subcommands
