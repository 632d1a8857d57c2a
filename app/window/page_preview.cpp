// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/page_preview.h"

#include "sheets/paint.h"
#include "theme/theme_of.h"

#include <QPainter>
#include <QPixmap>

#include <algorithm>

namespace drawercast::app {

namespace {

/// Where the whole page lies in the box.
QRectF place_of(const print::Page& page, const QRectF& box) {
    const double factor = std::min(box.width() / page.size_mm.x, box.height() / page.size_mm.y);
    QRectF place(0, 0, page.size_mm.x * factor, page.size_mm.y * factor);
    place.moveCenter(box.center());
    return place;
}

void paint_page(const print::Page& page, const QRectF& place, const QColor& edge, QPainter& painter) {
    painter.fillRect(place, Qt::white);
    painter.save();
    painter.setClipRect(place);
    painter.translate(place.topLeft());
    const double factor = place.width() / print::px(page.size_mm.x);
    painter.scale(factor, factor);
    sheets::paint(page.inks, painter);
    painter.restore();
    painter.setPen(edge);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(place.adjusted(-0.5, -0.5, 0.5, 0.5));
}

} // namespace

PagePreview::PagePreview(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void PagePreview::show_page(const print::Page* page) {
    page_ = page;
    setAccessibleName(page ? tr("Preview: %1").arg(page->name) : empty_words_);
    update();
}

void PagePreview::set_empty_words(const QString& words) {
    empty_words_ = words;
    update();
}

void PagePreview::paintEvent(QPaintEvent*) {
    const auto& theme = theme::theme_of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.bench);
    constexpr double margin = 14;
    const QRectF box = QRectF(rect()).adjusted(margin, margin, -margin, -margin);
    if (!page_) {
        painter.setPen(theme.ink2);
        painter.drawText(box, static_cast<int>(Qt::AlignCenter) | static_cast<int>(Qt::TextWordWrap),
                         empty_words_);
        return;
    }
    painter.setRenderHint(QPainter::Antialiasing);
    paint_page(*page_, place_of(*page_, box), theme.edge, painter);
}

QIcon thumbnail(const print::Page& page, QSize box, double pixel_ratio, const QColor& edge) {
    QPixmap picture(box * pixel_ratio);
    picture.setDevicePixelRatio(pixel_ratio);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF inner = QRectF(QPointF(), QSizeF(box)).adjusted(1, 1, -1, -1);
    paint_page(page, place_of(page, inner), edge, painter);
    return QIcon(picture);
}

} // namespace drawercast::app
