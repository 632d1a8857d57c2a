// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/palette.h"

#include <QPointF>
#include <QString>

class QPainter;

namespace drawercast::app {

/// A dimension along a level or upright line (ISO 129): extension lines from the two points to the line,
/// which lies `out` px to the right of or below them, filled arrows, figure in a gap; outside figures and
/// arrows where there is no room. Pixels, y down.
void paint_dimension(QPainter& painter, QPointF from, QPointF to, double out, const QString& figure,
                     const theme::Theme& theme);

} // namespace drawercast::app
