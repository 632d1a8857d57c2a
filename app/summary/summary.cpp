// SPDX-License-Identifier: GPL-3.0-or-later
#include "summary/summary.h"

#include "summary/build_up_page.h"
#include "summary/cut_pages.h"
#include "summary/job_page.h"
#include "summary/mold_pages.h"
#include "summary/run_pages.h"

#include <algorithm>

namespace drawercast::summary {

namespace {

std::vector<print::Page> framed(const Summary& summary, std::vector<Composed> composed) {
    std::vector<print::Page> pages;
    for (Composed& one : composed) {
        write_page_frame(one.page, summary, one.foot, static_cast<int>(pages.size()) + 1,
                         static_cast<int>(composed.size()));
        one.page.name = one.foot.drawer;
        pages.push_back(std::move(one.page));
    }
    return pages;
}

} // namespace

std::vector<print::Page> summary_pages(const job::Job& job, const plan::Plan& plan, print::Paper paper,
                                       const print::Printing& printing) {
    const theme::Theme theme = theme::printed_theme();
    const Summary summary{job, paper, printing, theme};
    std::vector<Composed> composed;
    const auto add = [&](std::vector<Composed> more) {
        std::move(more.begin(), more.end(), std::back_inserter(composed));
    };
    for (std::size_t i = 0; i < std::min(job.drawers.size(), plan.drawers.size()); ++i) {
        add(drawer_pages(summary, plan, i));
        add(mold_pages(summary, plan, i));
        add(build_up_pages(summary, plan, i));
    }
    add(run_pages(summary, plan));
    add(cut_pages(summary, plan));
    add(job_pages(summary, plan));

    return framed(summary, std::move(composed));
}

std::vector<print::Page> pour_cards(const job::Job& job, const plan::Plan& plan, print::Paper paper,
                                    const print::Printing& printing) {
    const theme::Theme theme = theme::printed_theme();
    const Summary summary{job, paper, printing, theme};
    return framed(summary, card_pages(summary, plan));
}

} // namespace drawercast::summary
