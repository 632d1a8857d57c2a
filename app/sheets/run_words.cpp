// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/run_words.h"

#include "language/spoken.h"

namespace drawercast::sheets {

namespace {

using language::tr;

/// With its day where that is not the day of `other`.
QString time_beside(double min, double other) {
    return runsheet::day_of(min) == runsheet::day_of(other) ? run_clock(min) : run_day_and_time(min);
}

} // namespace

QString run_clock(double min) {
    const int of_day = qRound(runsheet::minute_of_day(min));
    return QStringLiteral("%1:%2")
        .arg(of_day / 60, 2, 10, QLatin1Char('0'))
        .arg(of_day % 60, 2, 10, QLatin1Char('0'));
}

QString run_day_and_time(double min) {
    return tr("day %1, %2").arg(runsheet::day_of(min)).arg(run_clock(min));
}

QString run_until(const runsheet::Slot& slot) { return time_beside(slot.left_min, slot.begins_min); }

QString run_then(const runsheet::Slot& slot) {
    if (slot.ready_min == slot.left_min) return {};
    return tr("alone until %1").arg(time_beside(slot.ready_min, slot.begins_min));
}

} // namespace drawercast::sheets
