// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/unlimited_table.h"

#include <algorithm>
#include <set>

namespace drawercast::stock {

std::vector<Micro> sums_up_to(Micro most, const std::vector<Micro>& sizes) {
    std::set<Micro> sums{0};
    for (auto at = sums.begin(); at != sums.end(); ++at) // grows while it is walked, upward only
        for (const Micro size : sizes)
            if (size > 0 && *at + size <= most) sums.insert(*at + size);
    return {sums.begin(), sums.end()};
}

UnlimitedTable::UnlimitedTable(const OneSheetIn& in) {
    const Micro width = in.width + in.kerf, height = in.height + in.kerf;
    std::vector<Micro> widths, heights;
    const auto add = [&](Micro w, Micro h, std::int64_t value) {
        if (w > width || h > height) return;
        shapes_.push_back({w, h, value});
        widths.push_back(w);
        heights.push_back(h);
    };
    for (const ValuedPiece& piece : in.pieces) {
        const Micro w = piece.width + in.kerf, h = piece.height + in.kerf;
        add(w, h, piece.value);
        if (in.may_turn && w != h) add(h, w, piece.value);
    }
    x_ = sums_up_to(width, widths);
    y_ = sums_up_to(height, heights);
    values_.resize(x_.size() * y_.size());
    for (std::size_t j = 1; j < y_.size(); ++j)
        for (std::size_t i = 1; i < x_.size(); ++i) fill(i, j);
}

std::size_t UnlimitedTable::floor_index(const std::vector<Micro>& sizes, Micro size) {
    return static_cast<std::size_t>(std::upper_bound(sizes.begin(), sizes.end(), size) - sizes.begin()) - 1;
}

void UnlimitedTable::fill(std::size_t i, std::size_t j) {
    std::int64_t best = 0;
    for (const Shape& shape : shapes_)
        if (shape.width <= x_[i] && shape.height <= y_[j]) best = std::max(best, shape.value);
    for (std::size_t a = 1; a < i && 2 * x_[a] <= x_[i]; ++a)
        best = std::max(best, at(a, j) + at(floor_index(x_, x_[i] - x_[a]), j));
    for (std::size_t b = 1; b < j && 2 * y_[b] <= y_[j]; ++b)
        best = std::max(best, at(i, b) + at(i, floor_index(y_, y_[j] - y_[b])));
    values_[j * x_.size() + i] = best;
}

std::int64_t UnlimitedTable::value(Micro width, Micro height) const {
    return at(floor_index(x_, width), floor_index(y_, height));
}

} // namespace drawercast::stock
