// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/say.h"

#include "language/spoken.h"

#include <string>

namespace drawercast::sheets {

/// "512.5", in the job's unit and the language's figures.
inline std::string length_words(const job::Job& job, double mm) {
    return language::figures(plan::say_length_bare(mm, job.display_units)).toStdString();
}

} // namespace drawercast::sheets
