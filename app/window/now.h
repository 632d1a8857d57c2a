// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDateTime>

namespace drawercast::app {

/// Seconds since 1970, as the log of a job counts them.
inline double now_s() { return static_cast<double>(QDateTime::currentMSecsSinceEpoch()) / 1000; }

} // namespace drawercast::app
