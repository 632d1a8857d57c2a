// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/palette.h"

class QWidget;

namespace drawercast::app {

/// The theme of the style a widget is drawn with; the light one under any other style.
const theme::Theme& theme_of(const QWidget* widget);

} // namespace drawercast::app
