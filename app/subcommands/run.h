// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "subcommands/exit_code.h"

#include <string>
#include <vector>

namespace drawercast::subcommands {

/// Does what the arguments behind the program's name ask for. Answers go to standard output, everything that
/// is wrong to standard error on one line. Makes a Qt application object only where letters must be drawn.
Exit run(const std::vector<std::string>& arguments);

} // namespace drawercast::subcommands
