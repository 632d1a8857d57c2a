// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/quick_quote.h"

#include <string>

namespace drawercast::subcommands {

/// A quick quote in lines: what, about how much, from, to.
std::string quote_report(const job::Job& job, const plan::QuickQuote& quote);

} // namespace drawercast::subcommands
