// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/preferences.h"
#include "theme/palette.h"

class QPalette;

namespace drawercast::app {

/// The theme a maker's preference asks for, `desktop` being the palette the program started with.
theme::Theme chosen_theme(const Preferences& preferences, const QPalette& desktop);

/// Gives the whole program the style, palette and letters of a theme at a text size.
void wear(const theme::Theme& theme, double text_scale);

} // namespace drawercast::app
