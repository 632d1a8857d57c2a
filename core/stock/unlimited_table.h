// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/one_sheet.h"

#include <cstddef>
#include <vector>

namespace drawercast::stock {

/// The most value of any rectangle up to the sheet, any number of each piece: exact. Sizes are
/// grown: each piece with one kerf to its right and one behind it, and the sheet likewise, so that the saw's
/// width is gone from the searches. Dynamic programming over cuts at sums of piece sizes. Source: Gilmore and
/// Gomory (1966), The theory and computation of knapsack functions, Operations Research 14, 1045–1074;
/// discretization points after Beasley (1985), J. Opl Res. Soc. 36, 297–306.
class UnlimitedTable {
  public:
    explicit UnlimitedTable(const OneSheetIn& in);

    /// Of a rectangle width × height of the grown sheet.
    std::int64_t value(Micro width, Micro height) const;

    const std::vector<Micro>& widths() const { return x_; } ///< sums of piece widths, 0 first
    const std::vector<Micro>& heights() const { return y_; }

    /// Which of the ascending `sizes`, 0 first, is the greatest that is no more than `size` ≥ 0.
    static std::size_t floor_index(const std::vector<Micro>& sizes, Micro size);

  private:
    struct Shape { ///< a piece as it may lie
        Micro width = 0;
        Micro height = 0;
        std::int64_t value = 0;
    };

    std::int64_t at(std::size_t i, std::size_t j) const { return values_[j * x_.size() + i]; }
    void fill(std::size_t i, std::size_t j);

    std::vector<Shape> shapes_;
    std::vector<Micro> x_;
    std::vector<Micro> y_;
    std::vector<std::int64_t> values_;
};

/// All sums of `sizes` (each any number of times) up to `most`, ascending, 0 first.
std::vector<Micro> sums_up_to(Micro most, const std::vector<Micro>& sizes);

} // namespace drawercast::stock
