// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "language/say.h"

#include <QString>

#include <string>

namespace drawercast::sheets {

inline QString text(const std::string& utf8) { return QString::fromStdString(utf8); }
using language::fixed;

} // namespace drawercast::sheets
