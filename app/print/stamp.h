// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/fingerprint.h"

#include "language/spoken.h"

#include <QString>

namespace drawercast::print {

/// "rev. 2 · 3fa07c": which state of the job a paper is of; stands on every one, small.
inline QString stamp(const job::Job& job) {
    return language::tr("rev. %1 · %2").arg(job.revision).arg(QString::fromStdString(job::fingerprint(job)));
}

} // namespace drawercast::print
