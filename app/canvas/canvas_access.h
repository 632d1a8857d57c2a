// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace drawercast::app {

/// From now on a screen reader finds the pockets on the drawer plan as items of a list, each with its name,
/// depth and zone, its place on the screen, and whether it is chosen or locked. Once a program run.
void tell_readers_of_pockets();

} // namespace drawercast::app
