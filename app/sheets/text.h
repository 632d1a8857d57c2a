// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/say.h"

#include "language/spoken.h"

#include <QString>

#include <string>

namespace drawercast::sheets {

inline QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

/// `value` with `decimals` digits behind the language's decimal mark.
inline QString fixed(double value, int decimals) { return language::figures(plan::fixed(value, decimals)); }

} // namespace drawercast::sheets
