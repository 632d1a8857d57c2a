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

BuyLine loose(Goods goods, const ScrewUse& use, bool usual_prices) {
    const int needed = with_spare(use.count);
    const std::string size = rounded_text(use.diameter_mm, 3) + " × " + rounded_text(use.length_mm, 4);
    return {goods, size, needed, 0, needed, usual_prices ? needed * usual_price(use) : 0};
}

/// All pins are nipped off nails of one length: the longest's, as nails are sold.
ScrewUse nails_for(const std::vector<ScrewUse>& pins) {
    constexpr double step_mm = 5;
    ScrewUse nails = pins.front();
    nails.count = 0;
    for (const ScrewUse& pin : pins) {
        nails.length_mm = std::max(nails.length_mm, std::ceil(pin.length_mm / step_mm - 1e-9) * step_mm);
        nails.count += pin.count;
    }
    return nails;
}

} // namespace

double usual_price(const ScrewUse& use) {
    constexpr double usual_diameter_mm = 4, price_a_mm = 0.001, cent = 0.01;
    const double price = use.length_mm * price_a_mm * use.diameter_mm / usual_diameter_mm;
    return std::max(cent, std::round(price / cent) * cent);
}

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
        list.push_back(loose(Goods::screw, use, in.usual_prices));
    }
    if (!in.pins.empty()) list.push_back(loose(Goods::pin, nails_for(in.pins), in.usual_prices));
    for (const ClosureUse& use : closures) {
        const int needed = use.closure.kind == job::ClosureKind::screw ? with_spare(use.count) : use.count;
        const int at_hand = std::min(needed, use.closure.at_hand.value_or(0));
        list.push_back({Goods::closure, use.closure.name, needed, at_hand, needed - at_hand,
                        (needed - at_hand) * use.closure.price});
    }
    return list;
}

bool is_unpriced(const BuyLine& line) { return line.buy > 0 && line.price <= 0; }

int unpriced(const std::vector<BuyLine>& list) {
    return static_cast<int>(std::count_if(list.begin(), list.end(), is_unpriced));
}

double price_of(const std::vector<BuyLine>& list) {
    return std::accumulate(list.begin(), list.end(), 0.0,
                           [](double sum, const BuyLine& line) { return sum + line.price; });
}

} // namespace drawercast::stock
