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

/// Which templates, and on what paper.
struct TemplateChoice {
    Paper paper = Paper::a4;
    std::optional<Orientation> orientation; ///< of the tiles; nothing: for each drawing the one with fewer
    std::optional<TemplateKind> only;       ///< nothing: all of them
    bool operator==(const TemplateChoice&) const = default;
};

/// The 1:1 templates of a job, drawer by drawer: for each a cover and its tiles. A drawer whose insert or
/// cavity can't be made gives no pages of what depends on it.
std::vector<Page> template_pages(const job::Job& job, const plan::Plan& plan, const TemplateChoice& choice,
                                 const Printing& printing);

} // namespace drawercast::print
