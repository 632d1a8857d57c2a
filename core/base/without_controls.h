// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace drawercast {

/// `text` (UTF-8) with a blank for each control character and line separator, so that a name stays within its
/// line and asks nothing of a terminal.
std::string without_controls(std::string_view text);

} // namespace drawercast
