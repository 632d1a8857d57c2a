// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/still_picture.h"

#include "canvas/ink_difference.h"
#include "sheets/paint.h"

namespace drawercast::app {

QRegion StillPicture::draw(const Frame& frame, sheets::Inks inks) {
    if (frame.size.isEmpty()) return {};
    const bool afresh = pixmap_.isNull() || !(frame == frame_);
    QRegion region = afresh ? QRegion(QRect(QPoint(), frame.size)) : changed_region(inks_, inks);
    inks_ = std::move(inks);
    frame_ = frame;
    if (afresh) {
        pixmap_ = QPixmap(frame.size * frame.ratio);
        pixmap_.setDevicePixelRatio(frame.ratio);
    }
    if (!region.isEmpty()) paint_inks(region);
    return region;
}

void StillPicture::paint_inks(const QRegion& region) {
    QPainter painter(&pixmap_);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRegion(region);
    painter.fillRect(region.boundingRect(), frame_.paper);
    paint_inside(inks_, painter, region);
}

void StillPicture::paint(QPainter& painter, const QRegion& region) const {
    for (const QRect& rect : region)
        painter.drawPixmap(
            QRectF(rect), pixmap_,
            QRectF(QPointF(rect.topLeft()) * frame_.ratio, QSizeF(rect.size()) * frame_.ratio));
}

void paint_inside(const sheets::Inks& inks, QPainter& painter, const QRegion& region) {
    const QRect around = region.boundingRect();
    sheets::paint_some(inks, painter, [&](const sheets::Ink& ink) {
        const QRect reach = pixels_of(ink);
        return reach.isNull() ? std::holds_alternative<sheets::Clip>(ink)
                              : reach.intersects(around) && region.intersects(reach);
    });
}

} // namespace drawercast::app
