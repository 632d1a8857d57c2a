// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace drawercast::app {

/// Whether these arguments ask for the window: none at all, or one that is a file's name and not a word.
bool asks_for_window(const std::vector<std::string>& arguments);

/// Whether there is a display to open it on.
bool has_display();

/// Opens the window with the job named, if any, and runs until it is closed. Returns the exit code.
int run_window(int& count, char** values, const std::vector<std::string>& arguments);

} // namespace drawercast::app
