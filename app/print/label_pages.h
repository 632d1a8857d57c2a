// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "print/page.h"
#include "print/paper.h"

#include <vector>

namespace drawercast::print {

/// Labels to stick on: one for each body of each block, each filler, wall, base and plate, with number, name,
/// sizes as sawn, which side is up and which points to the front. None while the stock is not worked out.
std::vector<Page> label_pages(const job::Job& job, const plan::Plan& plan, Paper paper,
                              const Printing& printing);

} // namespace drawercast::print
