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
    const auto add = [&](Micro w, Micro h, std::size_t piece, bool turned) {
        if (w > width || h > height) return;
        shapes_.push_back({w, h, in.pieces[piece].value, static_cast<int>(piece), turned});
        widths.push_back(w);
        heights.push_back(h);
    };
    for (std::size_t piece = 0; piece < in.pieces.size(); ++piece) {
        const Micro w = in.pieces[piece].width + in.kerf, h = in.pieces[piece].height + in.kerf;
        add(w, h, piece, false);
        if (in.may_turn && w != h) add(h, w, piece, true);
    }
    x_ = sums_up_to(width, widths);
    y_ = sums_up_to(height, heights);
    cells_.resize(x_.size() * y_.size());
    for (std::size_t j = 1; j < y_.size(); ++j)
        for (std::size_t i = 1; i < x_.size(); ++i) fill(i, j);
}

std::size_t UnlimitedTable::floor_index(const std::vector<Micro>& sizes, Micro size) {
    return static_cast<std::size_t>(std::upper_bound(sizes.begin(), sizes.end(), size) - sizes.begin()) - 1;
}

void UnlimitedTable::fill(std::size_t i, std::size_t j) {
    Cell best;
    for (const Shape& shape : shapes_)
        if (shape.width <= x_[i] && shape.height <= y_[j] && shape.value > best.value)
            best = {shape.value, shape.piece, shape.turned, Saw::none, 0};
    for (std::size_t a = 1; a < i && 2 * x_[a] <= x_[i]; ++a) {
        const auto value = cell(a, j).value + cell(floor_index(x_, x_[i] - x_[a]), j).value;
        if (value > best.value) best = {value, -1, false, Saw::upright, a};
    }
    for (std::size_t b = 1; b < j && 2 * y_[b] <= y_[j]; ++b) {
        const auto value = cell(i, b).value + cell(i, floor_index(y_, y_[j] - y_[b])).value;
        if (value > best.value) best = {value, -1, false, Saw::level, b};
    }
    cells_[j * x_.size() + i] = best;
}

std::int64_t UnlimitedTable::value(Micro width, Micro height) const {
    return cell(floor_index(x_, width), floor_index(y_, height)).value;
}

int UnlimitedTable::pattern(Micro width, Micro height, std::vector<Pattern>& patterns) const {
    return pattern_at(floor_index(x_, width), floor_index(y_, height), patterns);
}

int UnlimitedTable::pattern_at(std::size_t i, std::size_t j, std::vector<Pattern>& patterns) const {
    const Cell& best = cell(i, j);
    if (best.value == 0) return -1;
    if (best.piece >= 0) {
        for (const Shape& shape : shapes_)
            if (shape.piece == best.piece && shape.turned == best.turned)
                patterns.push_back({shape.width, shape.height, shape.piece, shape.turned, Saw::none, -1, -1});
        return static_cast<int>(patterns.size()) - 1;
    }
    const bool upright = best.saw == Saw::upright;
    const int first = upright ? pattern_at(best.at, j, patterns) : pattern_at(i, best.at, patterns);
    const int second = upright ? pattern_at(floor_index(x_, x_[i] - x_[best.at]), j, patterns)
                               : pattern_at(i, floor_index(y_, y_[j] - y_[best.at]), patterns);
    if (first < 0 || second < 0) return std::max(first, second);
    const auto& a = patterns[static_cast<std::size_t>(first)];
    const auto& b = patterns[static_cast<std::size_t>(second)];
    Pattern both{0, 0, -1, false, best.saw, first, second};
    both.width = upright ? a.width + b.width : std::max(a.width, b.width);
    both.height = upright ? std::max(a.height, b.height) : a.height + b.height;
    patterns.push_back(both);
    return static_cast<int>(patterns.size()) - 1;
}

} // namespace drawercast::stock
