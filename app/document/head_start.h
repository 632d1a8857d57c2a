// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/planner.h"

#include <future>
#include <string>

namespace drawercast::app {

/// A planner that answers the job in `path` meanwhile, on another thread: opening it then finds most of the
/// work done. What cannot be read or answered it leaves to the opening, which can tell of it.
std::future<plan::Planner> head_start(std::string path);

} // namespace drawercast::app
