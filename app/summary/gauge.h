// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/page.h"
#include "theme/palette.h"

namespace drawercast::summary {

using shape::Box;
using shape::Vec;

/// A figure beside its limit, drawn as a dimension line.
struct Gauge {
    QString label;         ///< shortened first where room is scarce
    QString value;         ///< "38 s"
    QString limit;         ///< "of 50 s"
    double share = 0;      ///< value over limit
    bool at_least = false; ///< the limit must be reached, not kept below
    bool breached = false;
    bool decides = false; ///< the one that decides gets the wider bar and the word
};

inline constexpr double gauge_px = 27; ///< height

/// Words over a line with oblique ticks at 0 and at the limit and a bar as long as the value.
void write_gauge(sheets::Inks& inks, Vec top_left, double width, const Gauge& gauge,
                 const theme::Theme& theme);

/// A key figure with its caption over it and its unit small behind: "580 g" split at its last blank.
void write_key_figure(sheets::Inks& inks, Vec top_left, const QString& caption, const QString& figure,
                      const theme::Theme& theme);

} // namespace drawercast::summary
