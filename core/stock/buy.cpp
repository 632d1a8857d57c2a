// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/buy.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace drawercast::stock {

namespace {

int with_spare(int count) { return static_cast<int>(std::ceil(count * (1 + spare_screws) - 1e-9)); }

BuyLine bars(const BarCut& cut, const std::vector<job::Tube>& tubes) {
    const auto needed = static_cast<int>(cut.bars.size());
    const bool tube = std::any_of(tubes.begin(), tubes.end(),
                                  [&](const job::Tube& known) { return known.name == cut.stock; });
    return {
        tube ? Goods::tube : Goods::stiffener, cut.stock, needed, needed - cut.to_buy, cut.to_buy, cut.price};
}

const job::Closure* screw_of(const std::vector<job::Closure>& sold, const ScrewUse& use) {
    const auto at = std::find_if(sold.begin(), sold.end(), [&](const job::Closure& one) {
        return one.kind == job::ClosureKind::screw && one.diameter_mm == use.diameter_mm &&
               one.length_mm == use.length_mm;
    });
    return at == sold.end() ? nullptr : &*at;
}

} // namespace

void add_closure(std::vector<ClosureUse>& all, const ClosureUse& more) {
    const auto at = std::find_if(all.begin(), all.end(), [&](const ClosureUse& known) {
        return known.closure.name == more.closure.name;
    });
    if (at != all.end())
        at->count += more.count;
    else
        all.push_back(more);
}

std::vector<BuyLine> buy_list_of(const BuyIn& in) {
    std::vector<BuyLine> list;
    for (const BoardCut& cut : in.cuts.boards) {
        const auto needed = static_cast<int>(cut.sheets.size());
        list.push_back({Goods::board, cut.board.name, needed, std::min(needed, cut.board.at_hand), cut.to_buy,
                        cut.price});
    }
    for (const BarCut& cut : in.cuts.bars) list.push_back(bars(cut, in.tubes));
    std::vector<ClosureUse> closures = in.closures;
    for (const ScrewUse& use : in.screws) {
        if (const job::Closure* known = screw_of(in.sold, use)) {
            add_closure(closures, {*known, use.count});
            continue;
        }
        const int needed = with_spare(use.count);
        list.push_back({Goods::screw,
                        rounded_text(use.diameter_mm, 3) + " × " + rounded_text(use.length_mm, 4), needed, 0,
                        needed, 0});
    }
    for (const ClosureUse& use : closures) {
        const int needed = use.closure.kind == job::ClosureKind::screw ? with_spare(use.count) : use.count;
        const int at_hand = std::min(needed, use.closure.at_hand.value_or(0));
        list.push_back({Goods::closure, use.closure.name, needed, at_hand, needed - at_hand,
                        (needed - at_hand) * use.closure.price});
    }
    return list;
}

double price_of(const std::vector<BuyLine>& list) {
    return std::accumulate(list.begin(), list.end(), 0.0,
                           [](double sum, const BuyLine& line) { return sum + line.price; });
}

} // namespace drawercast::stock
