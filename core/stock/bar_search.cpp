// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/bar_search.h"

#include <algorithm>

namespace drawercast::stock {

BarSearch::BarSearch(Micro bar, const std::vector<Micro>& pieces, const std::vector<int>& order,
                     int most_steps)
    : bar_(bar), most_steps_(most_steps) {
    for (const int piece : order) {
        const Micro length = pieces[static_cast<std::size_t>(piece)];
        if (lengths_.empty() || lengths_.back() != length) lengths_.push_back(length), named_.emplace_back();
        named_.back().push_back(piece);
    }
}

BarSearch::Found BarSearch::with_bars(int bars) {
    Counts left;
    Micro total = 0;
    for (std::size_t i = 0; i < lengths_.size(); ++i) {
        left.push_back(static_cast<int>(named_[i].size()));
        total += lengths_[i] * left.back();
    }
    chosen_.clear();
    const Found found = place(left, bars, total);
    if (found == Found::yes) take_pieces();
    return found;
}

/// All ways to fill up a bar with what is left that leave no room for another piece.
void BarSearch::completions(const Counts& left, std::size_t from, Micro room, Counts& filling,
                            std::vector<Counts>& out) {
    constexpr std::size_t most_ways = 20'000; // of one bar; real bars take few pieces
    while (from < lengths_.size() && (left[from] == filling[from] || lengths_[from] > room)) ++from;
    if (from == lengths_.size()) {
        for (std::size_t i = 0; i < lengths_.size(); ++i)
            if (filling[i] < left[i] && lengths_[i] <= room) return; // a fuller bar is no worse
        out.push_back(filling);
        return;
    }
    const int before = filling[from];
    const int most = std::min<int>(left[from] - before, static_cast<int>(room / lengths_[from]));
    for (int count = most; count >= 0; --count) {
        if (out.size() > most_ways) break;
        filling[from] = before + count;
        completions(left, from + 1, room - count * lengths_[from], filling, out);
    }
    filling[from] = before;
    if (out.size() > most_ways) steps_ = most_steps_ + 1;
}

BarSearch::Found BarSearch::place(Counts& left, int bars_left, Micro total_left) {
    if (total_left == 0) return Found::yes;
    if (total_left > bars_left * bar_) return Found::no;
    const auto known = hopeless_.find(left);
    if (known != hopeless_.end() && bars_left <= known->second) return Found::no;

    const auto longest = static_cast<std::size_t>(
        std::find_if(left.begin(), left.end(), [](int count) { return count > 0; }) - left.begin());
    Counts filling(left.size(), 0);
    filling[longest] = 1; // it must go somewhere: here
    std::vector<Counts> ways;
    completions(left, longest, bar_ - lengths_[longest], filling, ways);
    const auto fill = [&](const Counts& way) {
        Micro sum = 0;
        for (std::size_t i = 0; i < way.size(); ++i) sum += way[i] * lengths_[i];
        return sum;
    };
    std::stable_sort(ways.begin(), ways.end(),
                     [&](const Counts& a, const Counts& b) { return fill(a) > fill(b); });
    for (const Counts& way : ways) {
        if (++steps_ > most_steps_) return Found::gave_up;
        const Micro filled = fill(way);
        if (total_left - filled > (bars_left - 1) * bar_) break; // the rest is emptier still
        for (std::size_t i = 0; i < left.size(); ++i) left[i] -= way[i];
        chosen_.push_back(way);
        const Found found = place(left, bars_left - 1, total_left - filled);
        for (std::size_t i = 0; i < left.size(); ++i) left[i] += way[i];
        if (found != Found::no) return found;
        chosen_.pop_back();
    }
    int& too_few = hopeless_[left];
    too_few = std::max(too_few, bars_left);
    return Found::no;
}

void BarSearch::take_pieces() {
    bars_.clear();
    auto named = named_;
    for (const Counts& way : chosen_) {
        auto& bar = bars_.emplace_back();
        for (std::size_t i = 0; i < way.size(); ++i)
            for (int n = 0; n < way[i]; ++n) {
                bar.push_back(named[i].front());
                named[i].erase(named[i].begin());
            }
    }
}

} // namespace drawercast::stock
