// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "summary/drawer_page.h"

namespace drawercast::summary {

/// One drawer's mold: the pressure plate with its figures beside their limits and every hole to drill, where
/// air stays, the pour map, the pour by seconds. None of what has not been worked out. `index` counts from 0.
std::vector<Composed> mold_pages(const Summary& summary, const plan::Plan& plan, std::size_t index);

} // namespace drawercast::summary
