// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include <QString>

namespace drawercast::app {

class Preferences;

/// Of which state of a job its templates were printed or written last, kept in the settings by the job's
/// file; of a job without a file nothing is.
void remember_printed(const QString& path, const job::Job& job, Preferences& preferences);

/// "Changed since the templates of rev. 2 were printed: …" with the drawers whose papers are old; empty where
/// none were printed, or the job says what it said then.
QString changed_since_printed(const QString& path, const job::Job& job, const Preferences& preferences);

} // namespace drawercast::app
