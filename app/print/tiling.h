// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "print/paper.h"

#include <functional>
#include <string>
#include <vector>

namespace drawercast::print {

using shape::Box;
using shape::Vec;

/// Neighboring tiles both show a strip this wide.
inline constexpr double overlap_mm = 10;

/// One sheet of paper of a drawing at true size. Rows are lettered from the front, columns counted from the
/// left, as zones are.
struct Tile {
    int column = 0;
    int row = 0;
    Box area_mm;        ///< of the drawing, shown on it
    bool empty = false; ///< nothing to trace in it: not printed

    std::string name() const; ///< "B2"
};

struct Tiling {
    Orientation orientation = Orientation::portrait;
    int columns = 1;
    int rows = 1;
    std::vector<Tile> tiles; ///< row by row from the front, each from the left

    const Tile* at(int column, int row) const; ///< null outside
    int printed() const;
    std::string extent() const; ///< "3×2"
    /// Where two neighbors are joined: the middle of their shared strip.
    double joint_x(int after_column) const;
    double joint_y(int after_row) const;
};

/// Whether there is anything to trace in a part of the drawing.
using HasContent = std::function<bool(const Box&)>;

/// Covers `area` with windows of `window_mm`, overlapping by overlap_mm, the drawing in their middle. Each
/// tile owns the part up to its joints; a tile that owns nothing to trace is empty.
Tiling tiled(const Box& area, Vec window_mm, Orientation orientation, const HasContent& has_content);

/// The better way round: fewer printed tiles, then fewer in all, then portrait.
Tiling fewest_tiles(const Tiling& portrait, const Tiling& landscape);

} // namespace drawercast::print
