// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include "print/correction.h"
#include "print/page.h"
#include "print/templates.h"

#include <QString>

#include <vector>

namespace drawercast::app {

class Preferences;

/// What is to be printed, and how.
struct PrintOrder {
    enum class What { templates, summary, drawings, cards };
    enum class To { pdf, printer, svg };

    What what = What::templates;
    print::TemplateChoice choice; ///< its paper holds for the summary too
    To to = To::pdf;
    QString printer;                ///< name, where that is where it goes
    std::vector<std::size_t> pages; ///< which of order_pages(), from 0, in order
    print::Corrections corrections; ///< what is known of all printers

    QString changed; ///< said with the pages: since the last print-out

    bool operator==(const PrintOrder&) const = default;
};

/// What pages go to, as corrections call it: the printer's name or "PDF"; empty where nothing is printed.
QString destination_of(const PrintOrder& order);
/// Of what the order's pages go to; none where it is not sound.
print::Correction correction_of(const PrintOrder& order);

/// All pages of the order; drawings, which are no pages, each as one of its own size.
std::vector<print::Page> order_pages(const PrintOrder& order, const job::Job& job, const plan::Plan& plan,
                                     const print::Printing& printing);

/// Those the maker chose of them.
std::vector<print::Page> chosen_pages(const PrintOrder& order, std::vector<print::Page> all);

/// As the maker printed last; the first time templates to a PDF, on the paper that goes with the units.
PrintOrder remembered_order(const Preferences& preferences, job::DisplayUnits units);
void remember(const PrintOrder& order, Preferences& preferences);
/// Those kept in the settings; what cannot be read or is not sound is left out.
print::Corrections remembered_corrections(const Preferences& preferences);

/// Papers go by the units: who measures in inches prints on letter.
print::Paper usual_paper(job::DisplayUnits units);

} // namespace drawercast::app
