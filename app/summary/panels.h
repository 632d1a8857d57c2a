// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include "summary/page_frame.h"

namespace drawercast::summary {

/// Foam, band and pressure, and time of one drawer, side by side. What could not be worked out says why.
inline constexpr double panels_px = 160;
void write_panels(sheets::Inks& inks, const Box& box, const Summary& summary, const plan::DrawerPlan& drawer);

} // namespace drawercast::summary
