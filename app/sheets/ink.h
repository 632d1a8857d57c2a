// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/path.h"
#include "theme/lettering.h"
#include "theme/pens.h"

#include <QColor>
#include <QString>

#include <string>
#include <variant>
#include <vector>

/// What finally gets drawn, in device units with y down: no roles, no frames, nothing left to decide. All
/// surfaces (screen, printer, PDF, SVG) are written from these few kinds.
namespace drawercast::sheets {

struct Fill {
    Path path;
    QColor color;
    bool operator==(const Fill&) const = default;
};
struct Stroke {
    Path path;
    theme::Pen pen;
    bool operator==(const Stroke&) const = default;
};
struct Words {
    QString text;
    Vec at;                     ///< left end of the base line
    theme::Lettering lettering; ///< px in device units here
    QColor color;
    double turn_deg = 0; ///< counter-clockwise as seen
    bool operator==(const Words&) const = default;
};
/// All that follows shows inside `box` only, until the next Clip; an empty box ends it.
struct Clip {
    Box box;
    bool operator==(const Clip&) const = default;
};
/// What follows belongs to this subject ("i1#1"; empty: to none). Only SVG groups show it.
struct About {
    std::string subject;
    bool operator==(const About&) const = default;
};

using Ink = std::variant<Fill, Stroke, Words, Clip, About>;
using Inks = std::vector<Ink>;

enum class Align { left, center, right };

/// Writes one line whose `align` end stands at `at`. The diameter sign, which our faces lack, is drawn.
void write(Inks& inks, const QString& text, Vec at, const theme::Lettering& lettering, const QColor& color,
           Align align = Align::left);

/// Where a line stands that is turned about its `align` end, counter-clockwise.
struct TurnedAt {
    Vec at;
    Align align = Align::left;
    double turn_deg = 0;
};
void write_turned(Inks& inks, const QString& text, const TurnedAt& where, const theme::Lettering& lettering,
                  const QColor& color);

/// All of `inks` larger by `factor` and then moved.
Inks moved(Inks inks, double factor, Vec by);

/// Where an ink may leave a trace, its line's width included; empty for Clip and About.
Box reach_of(const Ink& ink);

/// Length of what write() puts down.
double written_width(const QString& text, const theme::Lettering& lettering);

} // namespace drawercast::sheets
