// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace drawercast::subcommands {

/// What the program tells the shell.
enum class Exit {
    fine = 0,       ///< done; check: nothing to mend
    mend = 1,       ///< something to mend, or not all was done that was asked: help_text()
    unreadable = 2, ///< the job can't be read
    unwritable = 3, ///< the output can't be written
    usage = 64,     ///< the command line is not understood (sysexits.h)
    fault = 70,     ///< a fault of this program (sysexits.h)
};

} // namespace drawercast::subcommands
