// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "arrange/figure.h"
#include "arrange/random.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

namespace drawercast::arrange {

/// One way to lay a box: its sides, what must stay clear of its neighbors included.
struct Side {
    double along = 0; ///< x
    double across = 0;
    std::size_t turn = 0;
};
/// Where a box was laid: its least corner, and which of its ways.
struct Lying {
    shape::Vec at;
    std::size_t way = 0;
};
struct Layout {
    std::vector<std::optional<Lying>> boxes; ///< none where it found no place
    double length = 0;                       ///< along x, of those that did
    double left = 0;                         ///< area of those that did not
};

/// Boxes laid one by one onto the strip's skyline, at its lowest place the one that fits there best: as wide
/// as the place before any other, and of those as high as its neighbor (best fit: Burke, Kendall and
/// Whitwell, Operations Research 52, 2004; the order of merit after Leung, Zhang and Sim, EJOR 215, 2011); of
/// equal ones the first in `order`. None reaches beyond `length`.
Layout laid(const std::vector<std::vector<Side>>& boxes, double height, double length,
            const std::vector<std::size_t>& order);

/// The one of so many that leaves the least out of a strip of that length, each with two of the order
/// changed; that is kept unless it leaves more than the one some before it did (late acceptance: Burke and
/// Bykov, EJOR 258, 2017). Ends where nothing is left, or `stop` says so. `order` goes on from where it was.
Layout best_laid(const std::vector<std::vector<Side>>& boxes, double height, double length,
                 std::vector<std::size_t>& order, Random& random, const std::function<bool()>& stop);

/// All of them, the large ones first.
std::vector<std::size_t> large_first(const std::vector<std::vector<Side>>& boxes);

/// The ways to lay a figure's box at those of its turns at which it is about the least, `clear_mm` from
/// others.
std::vector<Side> ways_to_lay(const std::vector<TurnedFigure>& turns, double clear_mm);

} // namespace drawercast::arrange
