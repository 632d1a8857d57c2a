// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "language/spoken.h"

#include <string>

namespace drawercast::sheets {

/// A core's figure with the language's decimal mark, for labels where names, which are left alone, stand too.
inline std::string said(const std::string& figure) { return language::figures(figure).toStdString(); }

} // namespace drawercast::sheets
