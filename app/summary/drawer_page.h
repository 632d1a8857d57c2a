// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include "summary/page_frame.h"

#include <vector>

namespace drawercast::summary {

/// A page and the cells of its title block that are its own.
struct Composed {
    Page page;
    Foot foot;
};

/// One drawer: state, figures, plan, objects, checks; further pages for what the first has no room for.
/// `index` counts from 0.
std::vector<Composed> drawer_pages(const Summary& summary, const plan::Plan& plan, std::size_t index);

} // namespace drawercast::summary
