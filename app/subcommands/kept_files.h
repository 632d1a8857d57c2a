// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include "subcommands/command_line.h"

#include <optional>
#include <string>

namespace drawercast::subcommands {

/// Whether both paths lead to one ordinary file, by whatever spelling or links.
bool same_file(const std::string& a, const std::string& b);

/// A file is not what the command may write, as it is what it reads.
Problem input_lost(const std::string& out);

/// Why the command's output may not take the place of the file that is there: it is the command's own input,
/// or a job where a PDF is to be written. Asked before anything is worked out. A Problem of code "file".
std::optional<Problem> loses_a_file(const Command& command);

} // namespace drawercast::subcommands
