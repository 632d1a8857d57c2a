// SPDX-License-Identifier: GPL-3.0-or-later
#include "air/history.h"

#include "base/demand.h"

#include <algorithm>

namespace drawercast::air {
namespace {

constexpr int steps = 16;
constexpr double dry_share = 1e-6; ///< of a cell's room: less unfilled is rounding

/// Whether between the two some piece of air splits, or goes.
bool air_changes(const Moment& early, const Moment& late) {
    std::vector<int> children(static_cast<std::size_t>(early.dry.count) + 1, 0);
    const std::vector<int> parents = parents_of(late.dry, early.dry);
    for (std::size_t i = 1; i < parents.size(); ++i) ++children[static_cast<std::size_t>(parents[i])];
    return std::any_of(children.begin() + 1, children.end(), [](int n) { return n != 1; });
}

} // namespace

std::vector<int> parents_of(const Joined& later, const Joined& earlier) {
    std::vector<int> parents(static_cast<std::size_t>(later.count) + 1, 0);
    for (std::size_t cell = 0; cell < later.piece.size(); ++cell)
        if (later.piece[cell] != 0 && earlier.piece[cell] != 0)
            parents[static_cast<std::size_t>(later.piece[cell])] = earlier.piece[cell];
    return parents;
}

History::History(const Cells& cells, const Pieces& pieces, Rise& rise)
    : cells_(cells), pieces_(pieces), rise_(rise) {}

Moment History::moment_at(double expansion, const Front& before) {
    Moment moment;
    moment.front = rise_.at(expansion, before);
    moment.dry = joined_cells(cells_.mesh, [&](std::size_t cell) {
        return moment.front.unfilled[cell] > dry_share * cells_.room_mm3[cell];
    });
    return moment;
}

bool History::follow(const Watch& watch) {
    const double from = rise_.first_touch();
    const double to = rise_.full_expansion() - event_width / 2;
    push_when_full_ = rise_.full(pieces_);
    moments_.clear();
    Front before = rise_.start();
    for (int i = 0; i <= steps && to > from; ++i) {
        if (watch(0.6 * i / steps)) return false;
        moments_.push_back(moment_at(from + (to - from) * i / steps, before));
        before = moments_.back().front;
    }
    return refine([](const Moment& early, const Moment& late) { return air_changes(early, late); }, watch);
}

bool History::refine_at(const std::vector<std::size_t>& marked, const Watch& watch) {
    return refine(
        [&](const Moment& early, const Moment& late) {
            return std::any_of(marked.begin(), marked.end(), [&](std::size_t cell) {
                return early.dry.piece[cell] != 0 && late.dry.piece[cell] == 0;
            });
        },
        watch);
}

template <class Changes>
bool History::refine(Changes changes, const Watch& watch) {
    std::vector<Moment> done;
    std::vector<Moment> ahead(std::make_move_iterator(moments_.rbegin()),
                              std::make_move_iterator(moments_.rend()));
    moments_.clear();
    const double all = static_cast<double>(ahead.size());
    while (!ahead.empty()) {
        if (watch(std::clamp(1 - 0.4 * static_cast<double>(ahead.size()) / all, 0.6, 1.0))) return false;
        if (!done.empty()) {
            const double low = done.back().front.expansion;
            const double high = ahead.back().front.expansion;
            if (high - low > event_width && changes(done.back(), ahead.back())) {
                ahead.push_back(moment_at((low + high) / 2, done.back().front));
                continue;
            }
        }
        done.push_back(std::move(ahead.back()));
        ahead.pop_back();
    }
    moments_ = std::move(done);
    return true;
}

} // namespace drawercast::air
