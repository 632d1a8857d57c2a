// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/parted.h"

#include <algorithm>

namespace drawercast::arrange {

namespace {

constexpr int tries_for_all = 6;       ///< before one is left out (our guess)
constexpr std::uint64_t look = 40'000; ///< evaluations between two looks at what stands well so far

/// The figure from `old` on that overlaps most, of those that do; none: the size.
std::size_t most_in_the_way(const Search& search, std::size_t old) {
    std::size_t worst = search.size();
    double most = 0;
    for (std::size_t i = old; i < search.size(); ++i)
        if (search.overlap_of(i) > most) {
            most = search.overlap_of(i);
            worst = i;
        }
    return worst;
}

std::size_t in_count(const std::vector<bool>& out) {
    return static_cast<std::size_t>(std::count(out.begin(), out.end(), false));
}

/// What can stay as it stands now. Where what stood already is parted from nothing, all that is new goes.
Parted what_stays(Search& search, std::size_t old, const std::vector<bool>& left_out, const Stands& first) {
    std::vector<bool> out = left_out;
    while (search.total() > 0) {
        const std::size_t worst = most_in_the_way(search, old);
        if (worst == search.size()) break;
        out[worst] = true;
        search.set_left_out(out);
    }
    Parted parted{search.stands(), out};
    if (search.total() > 0) {
        for (std::size_t i = old; i < out.size(); ++i) parted.out[i] = true;
        std::copy(first.begin(), first.end(), parted.stands.begin());
    }
    search.set_left_out(left_out);
    return parted;
}

} // namespace

Parted all_parted(const Crowd& crowd, const Budget& budget, const Watch& watch, const TellParted& tell) {
    const std::size_t old = crowd.standing.size();
    Search search(crowd.room, crowd.figures, budget.seed);
    std::vector<bool> fixed = crowd.fixed;
    fixed.resize(search.size(), false);
    search.set_fixed(fixed);
    Stands stands = crowd.standing;
    stands.resize(search.size());
    search.set_stands(stands);
    std::vector<bool> left_out(search.size(), false);
    for (std::size_t i = old; i < search.size(); ++i) {
        const bool fits = std::any_of(crowd.figures[i].begin(), crowd.figures[i].end(),
                                      [&](const auto& one) { return !origins(crowd.room, one).empty(); });
        if (fits) search.put_anywhere(i);
        left_out[i] = !fits;
    }
    search.set_left_out(left_out);
    Parted best{stands, std::vector<bool>(search.size(), false)};
    for (std::size_t i = old; i < search.size(); ++i) best.out[i] = true;
    const auto take = [&](Parted now) {
        if (in_count(now.out) <= in_count(best.out)) return;
        best = std::move(now);
        tell(best);
    };
    std::uint64_t next_look = look;
    const auto over = [&] {
        if (search.evaluations() >= next_look) {
            next_look = search.evaluations() + look;
            take(what_stays(search, old, left_out, crowd.standing));
        }
        const double done =
            static_cast<double>(search.evaluations()) / static_cast<double>(budget.evaluations);
        return done >= 1 || watch(done);
    };
    const bool may_move = std::find(crowd.fixed.begin(), crowd.fixed.end(), false) != crowd.fixed.end();
    for (int failed = 0; in_count(left_out) > old || may_move;) {
        search.forget_weights();
        const bool parted = search.part(2, 80, over);
        Parted now = what_stays(search, old, left_out, crowd.standing);
        if (parted && in_count(now.out) == in_count(best.out))
            best = std::move(now); // all in order
        else
            take(std::move(now));
        if (parted || over()) break;
        const std::size_t worst = most_in_the_way(search, old);
        if (++failed % tries_for_all == 0 && worst < search.size()) {
            left_out[worst] = true;
            search.set_left_out(left_out);
            if (in_count(left_out) <= in_count(best.out)) break; // nothing more to be had
        } else if (worst < search.size()) {
            search.put_anywhere(worst);
        } else if (const std::size_t old_one = most_in_the_way(search, 0); old_one < old && !fixed[old_one]) {
            search.put_anywhere(old_one); // what stood is alone with itself, and not in order
        }
    }
    return best;
}

} // namespace drawercast::arrange
