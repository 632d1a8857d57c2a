// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/job.h"

#include "print/page.h"
#include "print/paper.h"
#include "theme/palette.h"

namespace drawercast::summary {

using print::Page;
using shape::Box;
using shape::Vec;

/// What all pages of one summary share.
struct Summary {
    const job::Job& job;
    print::Paper paper = print::Paper::a4;
    const print::Printing& printing;
    const theme::Theme& theme;

    QString said(double mm) const; ///< a length without its unit
};

/// The cells of a page's title block that differ from page to page.
struct Foot {
    QString drawer;         ///< its name, or "all drawers"
    QString scale;          ///< "1 : 3"; empty: no drawing on the page
    bool has_frame = false; ///< there is a drawing in the drawer frame
};

/// Room between the page's border and its title block, 1/96 in.
Box page_room(print::Paper paper);

/// Border, centering marks and title block; page numbers are known when all pages are there.
void write_page_frame(Page& page, const Summary& summary, const Foot& foot, int number, int total);

Page empty_page(print::Paper paper);

} // namespace drawercast::summary
