// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/palette.h"

#include <QPalette>

namespace drawercast::theme {

/// What the maker has chosen in the settings.
enum class ThemeChoice { system, light, dark, contrast_light, contrast_dark };

/// The theme for `choice`. For system, `desktop` is the palette the program started with: dark where its
/// ground is darker than its words; a high-contrast palette is taken over as it is (high_contrast_theme).
/// The two contrast choices are such palettes of our own, black on white and white on black, for desktops
/// that have none.
Theme theme_for(ThemeChoice choice, const QPalette& desktop);

/// Whether a desktop palette is one of the high-contrast kind: pure extremes, and fields on the same ground.
bool is_high_contrast(const QPalette& desktop);

/// The desktop's own colors in our roles: one ground, one ink, lines half as wide again, no washes.
Theme high_contrast_theme(const QPalette& desktop);

/// Qt's palette of a theme, for all three color groups.
QPalette widget_palette(const Theme& theme);

} // namespace drawercast::theme
