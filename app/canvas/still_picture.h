// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "canvas/view_map.h"
#include "sheets/ink.h"

#include <QColor>
#include <QPainter>
#include <QPixmap>
#include <QRegion>

namespace drawercast::app {

/// What stands still on a sheet, kept as a picture, so that a drag paints only what moves. Given other inks,
/// it draws again where they differ.
class StillPicture {
  public:
    struct Frame {
        QSize size;       ///< logical pixels
        double ratio = 1; ///< device pixels to a logical one
        ViewMap view;
        QColor paper;
        bool operator==(const Frame&) const = default;
    };

    /// Returns where the picture is another one than before, logical pixels.
    QRegion draw(const Frame& frame, sheets::Inks inks);
    void paint(QPainter& painter, const QRegion& region) const;

  private:
    void paint_inks(const QRegion& region);

    Frame frame_;
    sheets::Inks inks_;
    QPixmap pixmap_;
};

/// Those inks that show in `region`, clipped to it.
void paint_inside(const sheets::Inks& inks, QPainter& painter, const QRegion& region);

} // namespace drawercast::app
