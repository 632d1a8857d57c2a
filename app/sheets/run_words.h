// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "runsheet/schedule.h"

#include <QString>

/// Times of the run sheet in words, the same on screen and paper.
namespace drawercast::sheets {

QString run_clock(double min);                 ///< "08:30"
QString run_day_and_time(double min);          ///< "day 2, 08:30"
QString run_until(const runsheet::Slot& slot); ///< the clock, with its day where that is another one
QString run_then(const runsheet::Slot& slot);  ///< "alone until day 3, 08:00"; empty: not left alone

} // namespace drawercast::sheets
