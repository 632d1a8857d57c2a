// SPDX-License-Identifier: GPL-3.0-or-later
#include "stock/sheets.h"

#include "stock/sheet_filling.h"

#include <algorithm>
#include <functional>
#include <numeric>
#include <random>

namespace drawercast::stock {

namespace {

using Key = std::function<Micro(const SheetPiece&)>;

std::vector<int> sorted_by(const SheetsIn& in, const Key& key) {
    std::vector<int> order(in.pieces.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
        return key(in.pieces[static_cast<std::size_t>(a)]) > key(in.pieces[static_cast<std::size_t>(b)]);
    });
    return order;
}

std::vector<std::vector<int>> plain_orders(const SheetsIn& in) {
    const Key keys[] = {
        [](const SheetPiece& p) { return p.width * p.height; },
        [](const SheetPiece& p) { return std::max(p.width, p.height); },
        [](const SheetPiece& p) { return std::min(p.width, p.height); },
        [](const SheetPiece& p) { return p.width + p.height; },
        [](const SheetPiece& p) { return p.width; },
        [](const SheetPiece& p) { return p.height; },
    };
    std::vector<std::vector<int>> orders;
    for (const Key& key : keys) orders.push_back(sorted_by(in, key));
    return orders;
}

constexpr FillingRule all_rules[] = {{Fit::short_side, Split::longer_rest},
                                     {Fit::short_side, Split::widest_rest},
                                     {Fit::area, Split::longer_rest},
                                     {Fit::area, Split::widest_rest}};

/// The best so far of all tries.
struct Trial {
    std::vector<int> order;
    FillingRule rule;
    std::vector<CutTree> sheets;
    SheetsCost cost{std::numeric_limits<int>::max(), 0, 0};

    bool offer(const SheetsIn& in, std::vector<int> next, const FillingRule& by) {
        auto made = filled(in, next, by);
        const auto next_cost = cost_of(made);
        if (next_cost >= cost) return false;
        order = std::move(next), rule = by, sheets = std::move(made), cost = next_cost;
        return true;
    }
};

/// A number below `bound` that every standard library draws alike.
std::size_t draw(std::mt19937& random, std::size_t bound) { return random() % bound; }

double used(const CutTree& tree) {
    double sum = 0;
    for (const auto& panel : tree.nodes)
        if (panel.piece >= 0) sum += static_cast<double>(panel.width) * static_cast<double>(panel.height);
    return sum;
}

} // namespace

SheetsAnswer few_sheets(const SheetsIn& in, int most_tries) {
    SheetsAnswer answer;
    if (in.pieces.empty()) return answer;
    Trial best;
    for (const auto& order : plain_orders(in))
        for (const auto& rule : all_rules) best.offer(in, order, rule);
    std::mt19937 random(20); // any fixed seed
    for (int i = 0; i < most_tries && in.pieces.size() > 1; ++i) {
        auto order = best.order;
        const std::size_t swaps = 1 + draw(random, 3);
        for (std::size_t n = 0; n < swaps; ++n)
            std::swap(order[draw(random, order.size())], order[draw(random, order.size())]);
        best.offer(in, std::move(order), all_rules[draw(random, std::size(all_rules))]);
    }
    answer.sheets = std::move(best.sheets);
    std::stable_sort(answer.sheets.begin(), answer.sheets.end(),
                     [](const CutTree& a, const CutTree& b) { return used(a) > used(b); });
    answer.least = least_sheets(in);
    answer.proven = answer.least == static_cast<int>(answer.sheets.size());
    return answer;
}

} // namespace drawercast::stock
