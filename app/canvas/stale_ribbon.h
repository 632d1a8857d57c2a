// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/palette.h"

#include <QPainter>
#include <QRect>

/// What stands over a sheet of an older job while its answer is worked out.
namespace drawercast::app {

QRect ribbon_area(int width);

/// Hatched, with words on a plate: never by color alone. `done`: 0 … 1.
void paint_ribbon(QPainter& painter, int width, double done, const theme::Theme& theme);

} // namespace drawercast::app
