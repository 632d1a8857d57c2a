// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stock/cut_list.h"

#include <string>
#include <vector>

/// What is needed, what is at hand, what is left to buy.
namespace drawercast::stock {

enum class Goods { board, stiffener, tube, screw, closure, pin };

struct BuyLine {
    Goods goods = Goods::board;
    std::string name;
    int needed = 0;
    int at_hand = 0;
    int buy = 0;
    double price = 0; ///< of what is bought; 0: unknown
    bool operator==(const BuyLine&) const = default;
};

struct ClosureUse {
    job::Closure closure;
    int count = 0;
};

/// Adds to those of that name.
void add_closure(std::vector<ClosureUse>& all, const ClosureUse& more);

struct BuyIn {
    const CutList& cuts;
    std::vector<ScrewUse> screws;     ///< of joints and blocks
    std::vector<ScrewUse> pins;       ///< of blocks
    std::vector<ClosureUse> closures; ///< of the plate
    std::vector<job::Tube> tubes;
    std::vector<job::Closure> sold; ///< where joints' screws have their price from
    bool usual_prices = true;       ///< screws and pins that are not sold there cost usual_price()
};

/// Of a screw or pin, invented: the built-in closures' price, a thousandth for each millimeter of a 4 mm
/// screw, less for thinner ones.
double usual_price(const ScrewUse& use);

inline constexpr double spare_screws = 0.10; ///< over those counted (common practice)

/// Screws of joints and blocks that the shop knows as closures are one line with those, a fastener of that
/// size.
std::vector<BuyLine> buy_list_of(const BuyIn& in);
double price_of(const std::vector<BuyLine>& list);

/// It has to be bought and has no price.
bool is_unpriced(const BuyLine& line);

/// How many kinds of the list are.
int unpriced(const std::vector<BuyLine>& list);

} // namespace drawercast::stock
