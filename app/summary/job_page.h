// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "summary/drawer_page.h"

namespace drawercast::summary {

/// What holds for the job as a whole: foam to buy, its checks, assumptions, cautions.
std::vector<Composed> job_pages(const Summary& summary, const plan::Plan& plan);

} // namespace drawercast::summary
