// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/lengths.h"

#include "base/demand.h"
#include "stock/bar_search.h"

#include <algorithm>
#include <numeric>

namespace drawercast::stock {

namespace {

using Bars = std::vector<std::vector<int>>;

/// Longest first, each into the fullest bar that still takes it.
Bars best_fit(Micro bar, const std::vector<Micro>& pieces, const std::vector<int>& order) {
    Bars bars;
    std::vector<Micro> room;
    for (const int piece : order) {
        const Micro length = pieces[static_cast<std::size_t>(piece)];
        std::size_t best = room.size();
        for (std::size_t i = 0; i < room.size(); ++i)
            if (room[i] >= length && (best == room.size() || room[i] < room[best])) best = i;
        if (best == room.size()) room.push_back(bar), bars.emplace_back();
        room[best] -= length;
        bars[best].push_back(piece);
    }
    return bars;
}

/// L2 for one threshold: pieces over bar − threshold are alone, those over half the bar have one each, and
/// what they leave takes only part of the middling ones.
int bars_at(Micro bar, Micro threshold, const std::vector<Micro>& pieces) {
    int alone = 0, halves = 0;
    Micro room = 0, middling = 0;
    for (const Micro piece : pieces) {
        if (piece > bar - threshold)
            ++alone;
        else if (2 * piece > bar)
            ++halves, room += bar - piece;
        else if (piece >= threshold)
            middling += piece;
    }
    const Micro over = std::max<Micro>(0, middling - room);
    return alone + halves + static_cast<int>((over + bar - 1) / bar);
}

} // namespace

int least_bars(Micro bar, std::vector<Micro> pieces) {
    std::sort(pieces.begin(), pieces.end(), std::greater<>());
    int least = bars_at(bar, 0, pieces);
    for (const Micro piece : pieces)
        if (2 * piece <= bar) least = std::max(least, bars_at(bar, piece, pieces));
    return least;
}

LengthsAnswer fewest_bars(const LengthsIn& in, int most_steps) {
    const Micro bar = in.bar + in.kerf;
    std::vector<Micro> grown;
    for (const Micro piece : in.pieces) grown.push_back(piece + in.kerf);
    for (const Micro piece : grown) DRAWERCAST_DEMAND(piece > 0 && piece <= bar, "a piece fits a bar");

    std::vector<int> order(grown.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
        return grown[static_cast<std::size_t>(a)] > grown[static_cast<std::size_t>(b)];
    });
    LengthsAnswer answer;
    answer.bars = best_fit(bar, grown, order);
    answer.least = least_bars(bar, grown);
    BarSearch search(bar, grown, order, most_steps);
    while (answer.least < static_cast<int>(answer.bars.size())) {
        const auto found = search.with_bars(answer.least);
        if (found == BarSearch::Found::gave_up) break;
        if (found == BarSearch::Found::yes) answer.bars = search.bars();
        if (found == BarSearch::Found::no) ++answer.least;
    }
    answer.proven = answer.least == static_cast<int>(answer.bars.size());
    answer.steps = search.steps();
    return answer;
}

} // namespace drawercast::stock
