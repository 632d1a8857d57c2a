// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace drawercast::stock {

/// What a saw is set to for `mm`: the nearest whole number of its steps, at least one. A step of 0 is a saw
/// that cuts anything.
double sawn_mm(double mm, double step_mm);

/// The same, but never less than `mm`.
double sawn_up_mm(double mm, double step_mm);

inline constexpr double least_cut_mm = 60;    ///< shorter parts are cut from a strip (common practice)
inline constexpr double least_strip_mm = 300; ///< a strip that hands and fence can hold (common practice)
inline constexpr double sheet_trim_mm = 5;    ///< off each edge of a sheet, often bruised (common practice)

} // namespace drawercast::stock
