// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace drawercast {

/// Throws std::logic_error naming the place. Not for input: a false demand is a fault of this program.
[[noreturn]] void demand_failed(const char* what, const char* file, int line);

} // namespace drawercast

/// An invariant of ours, kept in every build: cheaper to stop at than to cast foam by.
#define DRAWERCAST_DEMAND(condition, what)                                                                   \
    (static_cast<bool>(condition) ? void() : ::drawercast::demand_failed(what, __FILE__, __LINE__))
