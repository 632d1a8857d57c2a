// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <QString>

namespace drawercast::app {

/// A problem of the core as one sentence beside a field: translated by its code where a form can cause it,
/// else the core's own English.
QString problem_words(const Problem& problem);

} // namespace drawercast::app
