// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace drawercast::app {

enum class Behind {
    answer,  ///< a tenth of the window's share: it comes also on a machine that is busy
    glimpse, ///< hardly any: what follows a drag must not hold it up
};

/// Makes the calling thread, and those it starts from then on, give way to the window's own where there are
/// fewer processors than threads that want one: a drag is painted first, answers come a little later. Does
/// nothing where the system knows no niceness of a single thread (all but Linux). Calling it again does no
/// more, unless it asks for more.
void work_behind_window(Behind how);

} // namespace drawercast::app
