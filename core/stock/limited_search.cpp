// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/limited_search.h"

#include <algorithm>

namespace drawercast::stock {

LimitedSearch::LimitedSearch(const OneSheetIn& in)
    : in_(in), width_(in.width + in.kerf), height_(in.height + in.kerf), unlimited_(in) {
    for (const auto& piece : in_.pieces) value_of_all_ += piece.value * piece.limit;
    joined_.resize(in_.pieces.size());
    fill_rest();
}

void LimitedSearch::fill_rest() {
    const auto &x = unlimited_.widths(), &y = unlimited_.heights();
    rest_.assign(x.size() * y.size(), 0);
    for (std::size_t j = y.size(); j-- > 0;)
        for (std::size_t i = x.size(); i-- > 0;) {
            std::int64_t most = unlimited_.value(width_ - x[i], y[j]); // right of it, or behind it
            most = std::max(most, unlimited_.value(x[i], height_ - y[j]));
            for (std::size_t wider = i + 1; wider < x.size(); ++wider)
                most = std::max(most, rest_[j * x.size() + wider] + unlimited_.value(x[wider] - x[i], y[j]));
            for (std::size_t deeper = j + 1; deeper < y.size(); ++deeper)
                most =
                    std::max(most, rest_[deeper * x.size() + i] + unlimited_.value(x[i], y[deeper] - y[j]));
            rest_[j * x.size() + i] = most;
        }
}

std::int64_t LimitedSearch::promise_of(const Pattern& pattern, std::int64_t value) const {
    const auto i = UnlimitedTable::floor_index(unlimited_.widths(), pattern.width);
    const auto j = UnlimitedTable::floor_index(unlimited_.heights(), pattern.height);
    return std::min(value + rest_[j * unlimited_.widths().size() + i], value_of_all_);
}

std::uint64_t LimitedSearch::hash_of_counts() const {
    std::uint64_t hash = 1469598103934665603ULL; // FNV-1a
    for (const auto count : joined_) hash = (hash ^ count) * 1099511628211ULL;
    return hash;
}

bool LimitedSearch::within_limits() const {
    for (std::size_t i = 0; i < joined_.size(); ++i)
        if (joined_[i] > in_.pieces[i].limit) return false;
    return true;
}

bool LimitedSearch::dominated(const Pattern& pattern) const {
    const auto known = by_counts_.find(hash_of_counts());
    if (known == by_counts_.end()) return false;
    return std::any_of(known->second.begin(), known->second.end(), [&](int index) {
        const Pattern& other = patterns_[static_cast<std::size_t>(index)];
        return other.width <= pattern.width && other.height <= pattern.height &&
               std::equal(joined_.begin(), joined_.end(), counts_of(index));
    });
}

void LimitedSearch::keep(const Pattern& pattern, std::int64_t value) {
    const std::int64_t promise = promise_of(pattern, value);
    if (value <= best_ && promise <= best_) return;
    if (dominated(pattern)) return;
    const int index = static_cast<int>(patterns_.size());
    patterns_.push_back(pattern);
    values_.push_back(value);
    counts_.insert(counts_.end(), joined_.begin(), joined_.end());
    by_counts_[hash_of_counts()].push_back(index);
    best_ = std::max(best_, value);
    if (promise > best_) open_.push({promise, index});
}

void LimitedSearch::add_single_pieces() {
    for (std::size_t i = 0; i < in_.pieces.size(); ++i) {
        const ValuedPiece& piece = in_.pieces[i];
        if (piece.limit < 1) continue;
        std::fill(joined_.begin(), joined_.end(), std::uint16_t{0});
        joined_[i] = 1;
        const Micro w = piece.width + in_.kerf, h = piece.height + in_.kerf;
        const auto add = [&](Micro width, Micro height) {
            if (width <= width_ && height <= height_) keep({width, height}, piece.value);
        };
        add(w, h);
        if (in_.may_turn && w != h) add(h, w);
    }
}

void LimitedSearch::join(int a, int b, Saw joint) {
    const Pattern &first = patterns_[static_cast<std::size_t>(a)],
                  &second = patterns_[static_cast<std::size_t>(b)];
    Pattern both;
    const bool upright = joint == Saw::upright;
    both.width = upright ? first.width + second.width : std::max(first.width, second.width);
    both.height = upright ? std::max(first.height, second.height) : first.height + second.height;
    if (both.width > width_ || both.height > height_) return;
    const auto *counts_a = counts_of(a), *counts_b = counts_of(b);
    for (std::size_t i = 0; i < joined_.size(); ++i)
        joined_[i] = static_cast<std::uint16_t>(counts_a[i] + counts_b[i]);
    if (!within_limits()) return;
    keep(both, values_[static_cast<std::size_t>(a)] + values_[static_cast<std::size_t>(b)]);
}

OneSheetAnswer LimitedSearch::run(int most_steps) {
    OneSheetAnswer answer;
    add_single_pieces();
    while (!open_.empty() && open_.top().value > best_) {
        if (static_cast<int>(patterns_.size()) > most_steps) {
            answer.proven = false;
            break;
        }
        const int next = open_.top().pattern;
        open_.pop();
        closed_.push_back(next);
        for (const int other : closed_)
            for (const Saw joint : {Saw::upright, Saw::level}) join(next, other, joint);
    }
    answer.value = best_;
    answer.steps = static_cast<int>(patterns_.size());
    return answer;
}

OneSheetAnswer best_limited(const OneSheetIn& in, int most_steps) {
    return LimitedSearch(in).run(most_steps);
}

} // namespace drawercast::stock
