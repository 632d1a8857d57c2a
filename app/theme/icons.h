// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QIcon>
#include <QRectF>
#include <QString>
#include <QStringList>

class QPainter;
class QPalette;

namespace drawercast::theme {

/// The two pencils an icon is drawn with: the thing, and the note on it.
struct IconInks {
    QColor thing;
    QColor note;

    bool operator==(const IconInks&) const = default;
};

/// The pencils `palette` holds: ink and blue; ink-3 for both where `mode` is QIcon::Disabled; on a chosen
/// ground (QIcon::Selected) what can be read there: the note turns ink where blue has a contrast under 3.
IconInks icon_inks(const QPalette& palette, QIcon::Mode mode);

/// Names of all icons, sorted: the files of resources/icons without their ending.
QStringList icon_names();

/// The icon drawn with the application's palette, as it is at the time of painting: a change of theme needs
/// no new icon. Sharp at any size and device pixel ratio. `name` must be one of icon_names().
QIcon icon(const QString& name);

/// The icon in inks of its own, for a ground that is not the palette's (the inverted cell of the title
/// strip).
QIcon icon(const QString& name, const IconInks& inks);

/// Draws the icon into the largest square in the middle of `where`, in vectors: for paper, and for places
/// where a painter is scaled.
void paint_icon(QPainter& painter, const QRectF& where, const QString& name, const IconInks& inks);

/// The program's own icon in 16 to 256 px; under 32 px the drawing made for few pixels.
QIcon program_icon();

/// The program's icon at `pixels` × `pixels`, for the files a desktop wants.
QImage program_icon_image(int pixels);

} // namespace drawercast::theme
