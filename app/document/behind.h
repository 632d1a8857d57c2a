// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace drawercast::app {

/// Makes the calling thread, and those it starts from then on, give way to the window's own where there are
/// fewer processors than threads that want one: a drag is painted first, answers come a little later. Does
/// nothing where the system knows no niceness of a single thread (all but Linux). Calling it again does no
/// more.
void work_behind_window();

} // namespace drawercast::app
