// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

namespace drawercast::theme {

/// Least contrast of words (WCAG 2.1, 1.4.3) and of lines, borders and signs (1.4.11).
inline constexpr double least_text_contrast = 4.5;
inline constexpr double least_line_contrast = 3.0;

/// Relative luminance of an opaque sRGB color, 0 black … 1 white (WCAG 2.1, "relative luminance").
double luminance(const QColor& color);

/// Contrast ratio of two opaque colors, 1 … 21, in either order (WCAG 2.1, "contrast ratio").
double contrast(const QColor& one, const QColor& other);

} // namespace drawercast::theme
