// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/output.h"

#include "base/without_controls.h"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <string>

namespace drawercast::subcommands {

Expected<void> say(std::string_view text) {
    const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
    if (written && std::fflush(stdout) == 0) return {};
    return Problem{"file", "standard output", verbatim(std::strerror(errno)), {}};
}

void complain(std::string_view text) {
    const std::string line = "drawercast: " + without_controls(text) + "\n";
    std::fwrite(line.data(), 1, line.size(), stderr);
}

} // namespace drawercast::subcommands
