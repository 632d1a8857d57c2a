// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

namespace drawercast {

/// Whoever waits for long work: told how far it is, 0 … 1; true asks it to stop. Never empty.
using Watch = std::function<bool(double done)>;

inline bool never_stop(double) { return false; }

} // namespace drawercast
