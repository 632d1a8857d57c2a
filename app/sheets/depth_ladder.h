// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

namespace drawercast::sheets {

/// The depth at which the ladder of depth washes ends, mm: 60 (3 in with an inch unit), for thicker inserts
/// their thickness rounded up to whole steps of 5 mm (1/4 in) times six.
double ladder_full_mm(double insert_mm, job::DisplayUnits units);

} // namespace drawercast::sheets
