// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "print/page.h"
#include "print/paper.h"
#include "print/template_kind.h"

#include <optional>
#include <vector>

namespace drawercast::print {

/// All 1:1 templates of a job, drawer by drawer: for each a cover and its tiles. Only those of `only` where
/// it is given. A drawer whose insert or cavity can't be made gives no pages of what depends on it.
std::vector<Page> template_pages(const job::Job& job, const plan::Plan& plan, Paper paper,
                                 std::optional<TemplateKind> only, const Printing& printing);

} // namespace drawercast::print
