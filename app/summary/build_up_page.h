// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include "summary/drawer_page.h"

namespace drawercast::summary {

/// One drawer's mold put together and taken apart; none where it has no pattern board.
std::vector<Composed> build_up_pages(const Summary& summary, const plan::Plan& plan, std::size_t index);

} // namespace drawercast::summary
