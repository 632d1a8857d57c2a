// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/page.h"
#include "theme/palette.h"

namespace drawercast::print {

/// A line with 100 mm on one side and 4 in on the other, to hold a real ruler against: printers err along and
/// across apart. Level ones run right from `start` with millimeters above; upright ones run up from it with
/// millimeters on the left.
enum class RulerWay { level, upright };
void write_ruler(sheets::Inks& inks, Vec start, RulerWay way, const theme::Theme& theme);

inline constexpr double ruler_mm = 100;
inline constexpr double ruler_in = 4;
/// Space a ruler takes on each side of its line, and along it beyond its start, mm.
inline constexpr double ruler_half_mm = 3.5;
inline constexpr double ruler_length_mm = 118;

} // namespace drawercast::print
