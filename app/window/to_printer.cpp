// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/to_printer.h"

#include "print/correction.h"
#include "sheets/paint.h"

#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPrinter>

#include <algorithm>

namespace drawercast::app {

namespace {

/// The named paper turned, not a paper wider than high: printers know the former.
QPageLayout layout_of(shape::Vec size_mm) {
    const bool landscape = size_mm.x > size_mm.y;
    const QSizeF upright(std::min(size_mm.x, size_mm.y), std::max(size_mm.x, size_mm.y));
    QPageLayout layout(QPageSize(upright, QPageSize::Millimeter), // finds the paper of that size
                       landscape ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF());
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

} // namespace

bool print_pages(const std::vector<print::Page>& pages, QPrinter& printer) {
    if (pages.empty()) return false;
    constexpr int dots_per_inch = 1200; // as the PDF: the matrix of a page is then exact
    printer.setResolution(dots_per_inch);
    printer.setFullPage(true);
    printer.setPageLayout(layout_of(pages.front().size_mm));
    QPainter painter;
    if (!painter.begin(&printer)) return false;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0) {
            printer.setPageLayout(layout_of(pages[i].size_mm));
            if (!printer.newPage()) return false;
        }
        painter.save();
        const double scale = printer.resolution() / 96.0; // a driver may have chosen another
        painter.scale(scale, scale);
        if (pages[i].stretch != shape::Vec{1, 1}) painter.setTransform(print::stretched(pages[i]), true);
        sheets::paint(pages[i].inks, painter);
        painter.restore();
    }
    return painter.end();
}

} // namespace drawercast::app
