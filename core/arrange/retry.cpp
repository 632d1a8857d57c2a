// SPDX-License-Identifier: GPL-3.0-or-later
#include "arrange/retry.h"

#include <algorithm>
#include <cmath>

namespace drawercast::arrange {

namespace {

void swap_two_large(Search& search) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < search.size(); ++i)
        if (search.may_move(i)) order.push_back(i);
    const auto size = [&](std::size_t i) { return search.figure(i).size; };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return size(a) > size(b); });
    order.resize((order.size() * 3 + 3) / 4);
    if (order.empty()) return;
    const std::size_t one = order[search.random().below(order.size())];
    std::vector<std::size_t> others;
    for (const std::size_t other : order)
        if (std::abs(size(other) - size(one)) > 0.01 * size(one)) others.push_back(other);
    if (!others.empty()) search.swap(one, others[search.random().below(others.size())]);
}

} // namespace

void Retry::after_failure(Search& search) {
    constexpr std::size_t remembered = 30;
    const Failure now{search.total(), search.stands()};
    failures_.insert(
        std::upper_bound(failures_.begin(), failures_.end(), now,
                         [](const Failure& a, const Failure& b) { return a.overlap < b.overlap; }),
        now);
    if (failures_.size() > remembered) failures_.pop_back();
    const double little = search.random()() * search.random()();
    const auto chosen = static_cast<std::size_t>(little * static_cast<double>(failures_.size()));
    search.set_stands(failures_[chosen].stands);
    swap_two_large(search);
}

} // namespace drawercast::arrange
