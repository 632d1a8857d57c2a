// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <chrono>

namespace drawercast::subcommands {

/// More than fifty drawers of any shop take; a job that takes longer is answered without its long parts.
inline constexpr std::chrono::seconds most_working = std::chrono::minutes(30);

struct WorkedOut {
    plan::Plan plan;
    bool whole = true; ///< false: where air stays, plates, vents, what to cut and buy are left out
};

/// The whole answer; on standard error how far it is every ten seconds, and what is left out where it would
/// take longer than `most`. The clock is a cap alone: what needs less is answered alike on every machine.
WorkedOut worked_out(const job::Job& job, std::chrono::seconds most = most_working);

} // namespace drawercast::subcommands
