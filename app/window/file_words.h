// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace drawercast::app {

/// A job's name as part of a file's: letters and digits in lower case, the rest single dashes; never empty.
QString file_words(const QString& name);

} // namespace drawercast::app
