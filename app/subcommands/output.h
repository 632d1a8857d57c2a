// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <string_view>

namespace drawercast::subcommands {

/// Writes to standard output; a Problem of code "file" where it does not take it all.
Expected<void> say(std::string_view text);

/// One line on standard error, with the program's name before it.
void complain(std::string_view text);

} // namespace drawercast::subcommands
