// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QString>

namespace drawercast::sheets {

/// A length for a column of figures, without its unit: as many decimals everywhere (mm 1, inches 3), so that
/// points stand below each other; fractions of an inch as they are.
QString aligned_length(double mm, job::DisplayUnits units);

} // namespace drawercast::sheets
