// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "print/page.h"
#include "print/paper.h"

#include <vector>

namespace drawercast::summary {

/// The job to hand over: a page for each drawer (more where its lists are long), then what holds for all of
/// them with assumptions and cautions.
std::vector<print::Page> summary_pages(const job::Job& job, const plan::Plan& plan, print::Paper paper,
                                       const print::Printing& printing);

/// Of it the pour cards and the rescue card alone.
std::vector<print::Page> pour_cards(const job::Job& job, const plan::Plan& plan, print::Paper paper,
                                    const print::Printing& printing);

} // namespace drawercast::summary
