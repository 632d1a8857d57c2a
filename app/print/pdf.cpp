// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/pdf.h"

#include "print/correction.h"
#include "sheets/paint.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

namespace drawercast::print {

namespace {

/// No margins and the whole page as canvas: both a margin and a fit to the page would spoil the scale.
QPageLayout layout_of(Vec size_mm) {
    const QPageSize size(QSizeF(size_mm.x, size_mm.y), QPageSize::Millimeter, {}, QPageSize::ExactMatch);
    QPageLayout layout(size, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter);
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

} // namespace

QByteArray pdf_of(const std::vector<Page>& pages, const QString& title, const QString& program) {
    if (pages.empty()) return {};
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly)) return {};
    QPdfWriter writer(&buffer);
    writer.setTitle(title);
    writer.setCreator(program);
    constexpr int dots_per_inch = 1200; // 72/1200 is short in decimal: Qt then writes the page matrix exactly
    writer.setResolution(dots_per_inch);
    writer.setPageLayout(layout_of(pages.front().size_mm));
    QPainter painter;
    if (!painter.begin(&writer)) return {};
    bool first = true;
    for (const Page& page : pages) {
        if (!first) {
            writer.setPageLayout(layout_of(page.size_mm));
            if (!writer.newPage()) return {};
        }
        first = false;
        painter.save();
        // never from the device's width: that is rounded down to whole dots
        painter.scale(dots_per_inch / 96.0, dots_per_inch / 96.0);
        if (page.stretch != shape::Vec{1, 1}) painter.setTransform(stretched(page), true);
        sheets::paint(page.inks, painter);
        painter.restore();
    }
    if (!painter.end()) return {};
    return bytes;
}

} // namespace drawercast::print
