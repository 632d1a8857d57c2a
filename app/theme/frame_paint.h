// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QRectF>

class QPainter;

namespace drawercast::theme {

/// A frame of `width` px lying wholly inside `rect`, with square corners, drawn as four bars: a pen would
/// straddle the edge and blur.
void draw_frame(QPainter& painter, const QRectF& rect, qreal width, const QColor& color);

/// Where a triangle of draw_arrow points.
enum class Pointing { up, down, left, right };

/// A small filled triangle, `size` px wide at its base, in the middle of `rect`.
void draw_arrow(QPainter& painter, const QRectF& rect, Pointing pointing, qreal size, const QColor& color);

/// The tick of a chosen check box, filling `rect`, `width` px wide.
void draw_tick(QPainter& painter, const QRectF& rect, qreal width, const QColor& color);

} // namespace drawercast::theme
