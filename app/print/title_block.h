// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/page.h"
#include "theme/palette.h"

#include <functional>
#include <vector>

/// The title block at the foot of every page (ISO 7200): the same cells in the same order on all of them.
namespace drawercast::print {

struct TitleCell {
    QString caption;
    std::vector<QString> lines; ///< the first bold unless `quiet`
    double share = 1;           ///< of the row's width
    bool quiet = false;
    std::function<void(sheets::Inks&, const Box&)> draw; ///< instead of caption and lines
};

/// One row of cells with lines between them, in the box. Words too long are shortened.
void write_cells(sheets::Inks& inks, const Box& box, const std::vector<TitleCell>& cells,
                 const theme::Theme& theme);

/// The frame in large letters beside its sign; the mold's inverted, MIRRORED in capitals of `capital_mm` (the
/// drawer's words somewhat smaller).
void write_frame(sheets::Inks& inks, const Box& box, bool mirrored, double capital_mm,
                 const theme::Theme& theme);

/// Frame line around the block and its wide top line.
void write_outline(sheets::Inks& inks, const Box& box, const theme::Theme& theme);

/// A line in page units, of one role.
void rule(sheets::Inks& inks, Vec from, Vec to, theme::LineRole role, const theme::Theme& theme);
void frame(sheets::Inks& inks, const Box& box, theme::LineRole role, const theme::Theme& theme);

} // namespace drawercast::print
