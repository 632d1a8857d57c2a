// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/palette.h"

class QWidget;

namespace drawercast::theme {

/// The theme of the style a widget is drawn with; the light one under any other style.
const Theme& theme_of(const QWidget* widget);

} // namespace drawercast::theme
