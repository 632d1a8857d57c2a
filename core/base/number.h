// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace drawercast {

/// The whole of `text` as a finite double, by std::from_chars: no locale, no leading '+' or blanks, no hex,
/// no "nan" or "inf". Nothing where it is anything else.
std::optional<double> parse_number(std::string_view text);

/// The shortest plain decimal text that reads back as exactly `value` (never an exponent, −0 is "0").
/// `value` must be finite.
std::string number_text(double value);

/// `value` rounded to at most `digits` significant digits, same form as number_text. Not for values that are
/// read back as the same double.
std::string rounded_text(double value, int digits);

/// `value` rounded to 1e-6, the grain in which lengths enter a job, so that equality means equality. −0
/// becomes 0.
double grained(double value);

} // namespace drawercast
