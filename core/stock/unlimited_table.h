// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/one_sheet.h"
#include "stock/pattern.h"

#include <cstddef>
#include <vector>

namespace drawercast::stock {

/// The most value of any rectangle up to the sheet, pieces without limits, in grown sizes.
class UnlimitedTable {
  public:
    explicit UnlimitedTable(const OneSheetIn& in);

    /// Of a rectangle width × height of the grown sheet.
    std::int64_t value(Micro width, Micro height) const;
    /// The pattern that has this value; −1 for none. Appends to `patterns`.
    int pattern(Micro width, Micro height, std::vector<Pattern>& patterns) const;

    const std::vector<Micro>& widths() const { return x_; } ///< sums of piece widths, 0 first
    const std::vector<Micro>& heights() const { return y_; }

    /// Which of the ascending `sizes`, 0 first, is the greatest that is no more than `size` ≥ 0.
    static std::size_t floor_index(const std::vector<Micro>& sizes, Micro size);

  private:
    struct Cell {
        std::int64_t value = 0;
        int piece = -1;
        bool turned = false;
        Saw saw = Saw::none;
        std::size_t at = 0; ///< index of the first part's size
    };
    struct Shape { ///< a piece as it may lie
        Micro width = 0;
        Micro height = 0;
        std::int64_t value = 0;
        int piece = 0;
        bool turned = false;
    };

    const Cell& cell(std::size_t i, std::size_t j) const { return cells_[j * x_.size() + i]; }
    void fill(std::size_t i, std::size_t j);
    int pattern_at(std::size_t i, std::size_t j, std::vector<Pattern>& patterns) const;

    std::vector<Shape> shapes_;
    std::vector<Micro> x_;
    std::vector<Micro> y_;
    std::vector<Cell> cells_;
};

/// All sums of `sizes` (each any number of times) up to `most`, ascending, 0 first.
std::vector<Micro> sums_up_to(Micro most, const std::vector<Micro>& sizes);

} // namespace drawercast::stock
