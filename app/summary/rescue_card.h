// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "summary/drawer_page.h"

#include <vector>

namespace drawercast::summary {

/// One page for whoever stands at the mold when something goes wrong. Common practice, no source.
std::vector<Composed> rescue_card(const Summary& summary, const plan::Plan& plan);

} // namespace drawercast::summary
