// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>

namespace drawercast {

/// Calls `work` once for each index below `count`, on as many threads as the machine has cores; returns when
/// all are done. What they share must be safe to share. An exception of one, the first that comes, is thrown
/// here once the rest are done.
void side_by_side(std::size_t count, const std::function<void(std::size_t)>& work);

} // namespace drawercast
