// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include <optional>

namespace drawercast::app {

/// The way an arrow key points, of length 1, y up; nothing for other keys.
std::optional<shape::Vec> way_of(int key);

} // namespace drawercast::app
