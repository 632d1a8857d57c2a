// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>

class QFontMetrics;
class QPainter;

namespace drawercast::theme {

struct Theme;

/// A figure beside its limit, all words ready to show.
struct Gauge {
    QString label;         ///< "screw 3"; shortened first where room is scarce
    QString value;         ///< "318 N"
    QString limit;         ///< "of 380 N"
    QString decides;       ///< the word behind the label of the one that decides, else empty
    double share = 0;      ///< value over limit; under 0 is drawn as 0
    bool breached = false; ///< the limit is not kept: over a most, or under a least
};

/// Height of a gauge in the font of `metrics`; 28 px in 13 px type.
int gauge_height(const QFontMetrics& metrics);

/// Draws `gauge` in the painter's font along the top of `rect`: words over a dimension line with an oblique
/// tick at 0 and at the limit, and a bar as long as the value's share; 4 px where it decides, 3 elsewhere. A
/// breached one is red and carries a square with "!"; a bar over the limit goes past its tick.
void paint_gauge(QPainter& painter, const QRectF& rect, const Gauge& gauge, const Theme& theme);

/// The hatching over figures that are not worked out yet: 45°, 9 px apart, in lines of its own so that it
/// prints and scales. It hangs on the painter's origin, not on `rect`, so neighbors join.
void paint_old_answer(QPainter& painter, const QRectF& rect, const Theme& theme);

} // namespace drawercast::theme
