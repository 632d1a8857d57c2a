// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/roles.h"

#include <QFont>
#include <QString>

namespace drawercast::theme {

enum class Face {
    regular,
    medium,
    bold,
    drafting, ///< engraved drafting letters: words only, never figures
};

/// Makes the embedded fonts known to Qt; needs an application object. Returns whether all are there. Calling
/// it again does no harm.
bool load_fonts();

/// The face at `px` pixels, without hinting: widths then are those of the printed letters.
QFont font_of(Face face, int px);

/// How a kind of words is written, size in px (on paper: 1/96 in).
struct Lettering {
    Face face = Face::regular;
    double px = 12;
    double spacing = 1; ///< of the letters' own widths
    bool operator==(const Lettering&) const = default;
};
Lettering lettering_of(TextRole role, Medium medium);

/// Height of capitals as a share of the size, all our faces (1480/2048 in one, 736/1024 in the other).
inline constexpr double capital_share = 0.72;
/// How far letters reach below the line, as a share of the size.
inline constexpr double descent_share = 0.21;

/// Length of `text` on its line, in the unit of lettering.px.
double width_of(const QString& text, const Lettering& lettering);

} // namespace drawercast::theme
