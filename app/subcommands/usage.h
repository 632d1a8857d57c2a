// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <string>
#include <utility>

namespace drawercast::subcommands {

/// What of a command is not understood, in the terminal's English.
inline Problem usage(std::string what, std::string fix = "See drawercast --help") {
    return {"usage", {}, verbatim(std::move(what)), verbatim(std::move(fix))};
}

} // namespace drawercast::subcommands
