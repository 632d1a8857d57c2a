// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include "summary/drawer_page.h"

#include <vector>

namespace drawercast::summary {

/// The run sheet, day by day with boxes to tick, and a pour card for each drawer that has a dose.
std::vector<Composed> run_pages(const Summary& summary, const plan::Plan& plan);

/// Of these the pour card of each drawer and the rescue card, to hang beside the mold.
std::vector<Composed> card_pages(const Summary& summary, const plan::Plan& plan);

} // namespace drawercast::summary
