// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/object.h"

#include "theme/palette.h"

#include <QRectF>

class QPainter;

namespace drawercast::app {

/// An object from above, small, washed by its depth; dashed and empty while none of it is placed.
void paint_sketch(QPainter& painter, const QRectF& where, const job::Object& object, bool placed,
                  const theme::Theme& theme);

} // namespace drawercast::app
