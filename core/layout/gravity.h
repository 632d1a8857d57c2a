// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace drawercast::layout {

inline constexpr double gravity_m_s2 = 9.80665; ///< standard gravity, 3rd CGPM 1901

} // namespace drawercast::layout
