// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/problem.h"
#include "base/typed.h"

#include <string>
#include <string_view>

namespace drawercast {

/// How lengths are shown and typed.
enum class LengthUnit { mm, inch, inch_32 };

/// A length as shown, without its unit: mm to 0.1, inches to 0.001, fractions to the nearest 1/32 ("3 1/4",
/// "-1/2"). What is shown can be typed back.
std::string length_digits(double mm, LengthUnit unit, DecimalMark mark = DecimalMark::point);
/// The same with " mm" or " in".
std::string length_text(double mm, LengthUnit unit, DecimalMark mark = DecimalMark::point);

/// A typed length in mm. Understood: "82.5", "82,5", "8.25 cm", "3 1/4 in", "3-1/4\"", "5/8", "0.2 m", "2
/// ft", "-4"; a number without a unit is taken in `unit`. Either decimal mark is understood, except where
/// three digits follow the one that `mark` is not: "1,500" could be one and a half or fifteen hundred, and is
/// refused. Within ±99.9998 m (3937 in).
Expected<double> parse_length(std::string_view typed, LengthUnit unit, DecimalMark mark = DecimalMark::point);

} // namespace drawercast
