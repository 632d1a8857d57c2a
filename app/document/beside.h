// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

class QObject;
class QThreadPool;

namespace drawercast::app {

/// Runs `work` beside the window, on a thread of `pool`. What it throws is thrown again among the events of
/// `owner`, on the owner's thread, where it ends as any other fault of the program does and not by ending
/// the process on the spot. The owner must wait for the pool before it goes.
void work_beside_window(QThreadPool& pool, QObject& owner, std::function<void()> work);

} // namespace drawercast::app
