// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "summary/drawer_page.h"

namespace drawercast::summary {

/// Everything to cut and buy: boxes, blocks by stock, fence settings, cut sheets, bars, shopping, what is
/// used up, places always missed. None while it has not been worked out.
std::vector<Composed> cut_pages(const Summary& summary, const plan::Plan& plan);

} // namespace drawercast::summary
