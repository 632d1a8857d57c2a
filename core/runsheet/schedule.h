// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "runsheet/task.h"

#include <cstddef>
#include <vector>

namespace drawercast::runsheet {

/// When the shop is open, each day alike; 0 ≤ opens_h < closes_h ≤ 24.
struct Hours {
    double opens_h = 8;
    double closes_h = 17;
    bool operator==(const Hours&) const = default;
};

/// When a task is done. Minutes from the first day's midnight.
struct Slot {
    std::size_t task = 0; ///< index
    double begins_min = 0;
    double left_min = 0;   ///< hands are off
    double ready_min = 0;  ///< what comes after may begin
    bool critical = false; ///< a delay here delays the end
    bool operator==(const Slot&) const = default;
};

struct Schedule {
    std::vector<Slot> entries; ///< by begin
    int days = 0;              ///< shop days until the last thing is ready
    bool operator==(const Schedule&) const = default;
};

/// One crew does one thing at a time, always the one that can begin first; of several the one with most still
/// to come behind it: a parallel schedule generation scheme with the longest-tail rule, cited from memory.
/// Source: Kolisch and Hartmann (1999), in Węglarz (ed.), Project Scheduling, 147–178.
/// Demands that ids are unique, `after` names known ones and goes round in no circle, and that what is done
/// in one go fits into one day.
Schedule schedule(const std::vector<Task>& tasks, const Hours& hours);

/// 1 for the first day; and the minute of that day.
int day_of(double min);
double minute_of_day(double min);

} // namespace drawercast::runsheet
