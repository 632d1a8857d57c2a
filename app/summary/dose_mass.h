// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QString>

namespace drawercast::summary {

/// A mass as it is read off the scale while dosing: always in grams, or in ounces with an inch unit, never
/// in two units beside each other.
QString dose_mass(double g, job::DisplayUnits units);

} // namespace drawercast::summary
