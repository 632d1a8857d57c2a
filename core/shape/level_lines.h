// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/vec.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <map>
#include <utility>
#include <vector>

namespace drawercast::shape {

/// A line on which a field has one value. Closed ones repeat their first point.
using LevelLine = std::vector<Vec>;

/// A node of a grid: which column and row it is in, from 0.
struct GridNode {
    std::size_t column = 0;
    std::size_t row = 0;
};

/// Marching squares over a Grid, which says
///     std::size_t columns() const, rows() const;
///     double value(GridNode) const;
///     Vec place(GridNode) const;
/// Linear between neighbors; a saddle is cut so that its higher corners stay apart. Method: Lorensen and
/// Cline (1987), Computer Graphics 21(4), 163–169, in the plane; from memory.
template <class Grid>
class LevelTracer {
  public:
    LevelTracer(const Grid& grid, double level) : grid_(grid), level_(level), columns_(grid.columns()) {}

    /// Each line as long as it hangs together; open ones first.
    std::vector<LevelLine> lines() {
        for (std::size_t row = 0; row + 1 < grid_.rows(); ++row)
            for (std::size_t column = 0; column + 1 < columns_; ++column) cross(column, row);
        std::vector<LevelLine> lines;
        for (const auto& [start, ends] : ends_)
            if (ends.size() == 1) follow(start, lines);
        for (const auto& [start, ends] : ends_) follow(start, lines);
        return lines;
    }

  private:
    /// Between a node and the one to its right (even) or behind it (odd).
    using Crossing = std::size_t;
    Crossing to_right(GridNode n) const { return 2 * (n.row * columns_ + n.column); }
    Crossing to_back(GridNode n) const { return to_right(n) + 1; }

    /// The square between four nodes, `column` and `row` those of the lower left one.
    void cross(std::size_t column, std::size_t row) {
        const std::array<GridNode, 4> corner{
            GridNode{column, row}, {column + 1, row}, {column + 1, row + 1}, {column, row + 1}};
        std::array<bool, 4> high{};
        for (std::size_t i = 0; i < 4; ++i) high[i] = grid_.value(corner[i]) >= level_;
        const std::array<Crossing, 4> side{to_right(corner[0]), to_back(corner[1]), to_right(corner[3]),
                                           to_back(corner[0])};
        std::array<std::size_t, 4> cut{}; // sides, counter-clockwise
        std::size_t cuts = 0;
        for (std::size_t i = 0; i < 4; ++i)
            if (high[i] != high[(i + 1) % 4]) cut[cuts++] = i;
        if (cuts == 2) link(side[cut[0]], side[cut[1]]);
        if (cuts < 4) return;
        const std::size_t turn = high[0] ? 3 : 0; // cuts off the high corners one by one
        link(side[turn], side[(turn + 1) % 4]);
        link(side[(turn + 2) % 4], side[(turn + 3) % 4]);
    }

    void link(Crossing a, Crossing b) {
        ends_[a].push_back(b);
        ends_[b].push_back(a);
    }

    Vec point(Crossing at) const {
        const GridNode a{at / 2 % columns_, at / 2 / columns_};
        const GridNode b = at % 2 == 0 ? GridNode{a.column + 1, a.row} : GridNode{a.column, a.row + 1};
        const double share = (level_ - grid_.value(a)) / (grid_.value(b) - grid_.value(a));
        return grid_.place(a) + (grid_.place(b) - grid_.place(a)) * share;
    }

    void follow(Crossing at, std::vector<LevelLine>& lines) {
        LevelLine line;
        for (;;) {
            auto& ends = ends_.at(at);
            if (ends.empty()) break;
            if (line.empty()) line.push_back(point(at));
            const Crossing next = ends.back();
            ends.pop_back();
            std::erase(ends_.at(next), at);
            line.push_back(point(next));
            at = next;
        }
        if (!line.empty()) lines.push_back(std::move(line));
    }

    const Grid& grid_;
    double level_;
    std::size_t columns_;
    std::map<Crossing, std::vector<Crossing>> ends_;
};

} // namespace drawercast::shape
