// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "print/page.h"
#include "print/paper.h"

#include <vector>

namespace drawercast::print {

/// The walls' screws at true size: strips to lay on the foot edges, long ones in lengths that join at a
/// marked line. None while the stock is not worked out.
std::vector<Page> strip_pages(const job::Job& job, const plan::Plan& plan, Paper paper,
                              const Printing& printing);

} // namespace drawercast::print
