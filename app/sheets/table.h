// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheets/ink.h"
#include "theme/palette.h"

#include <QString>

#include <functional>
#include <vector>

namespace drawercast::sheets {

/// Rows of words under headed columns, for pages and beside drawings.
struct Table {
    struct Column {
        QString head;
        Align align = Align::left;
        double share = 1; ///< of the width left over by the columns of fixed width
        double fixed_px = 0;
        bool fitted = false; ///< as wide as its longest words
        bool folds = false;  ///< words too long for it go on below, see folded()
    };
    struct Cell {
        QString text;
        bool bold = false;
        /// Draws into the cell's box instead of words.
        std::function<void(Inks&, const Box&)> sketch;
    };
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;
    std::vector<bool> goes_on; ///< of each row, whether the next is its second line; shorter: no
    double text_px = 10;
    double head_px = 9.5;
    double row_px = 16;

    double head_height() const { return row_px; }
    /// How many rows from `first` fit into `height`, the head included.
    std::size_t rows_fitting(std::size_t first, double height) const;
    /// Writes rows [first, first + count) into the box's width from its top; returns the height used.
    double write(Inks& inks, Vec top_left, double width, std::size_t first, std::size_t count,
                 const theme::Theme& theme) const;
};

/// The table as it is written `width` wide: a row whose words are too long for a column that folds becomes
/// as many rows as it has lines.
Table folded(const Table& table, double width);

/// `text` shortened by "…" until it is no wider than `width`.
QString elided(const QString& text, const theme::Lettering& lettering, double width);

/// `text` broken at blanks into lines no wider than `width`; a longer word stands alone.
std::vector<QString> broken(const QString& text, const theme::Lettering& lettering, double width);

} // namespace drawercast::sheets
