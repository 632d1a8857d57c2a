// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"

#include <string_view>

namespace drawercast {

/// Decimal mark of shown numbers. Both are understood when typed.
enum class DecimalMark { point, comma };

/// Without the blanks, tabs and line ends at both ends.
std::string_view trimmed(std::string_view text);

/// A number as people type it: "82.5", "82,5", ".5", "-4", "+4", "−4", "5/8", "3 1/4", "3-1/4"; blanks at
/// both ends are no matter. Either decimal mark is understood, except where three digits follow the one that
/// `mark` is not: "1,500" could be one and a half or fifteen hundred, and is refused ("number-ambiguous");
/// anything else is "number".
Expected<double> parse_typed_number(std::string_view typed, DecimalMark mark = DecimalMark::point);

} // namespace drawercast
