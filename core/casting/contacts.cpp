// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/contacts.h"

#include <algorithm>
#include <utility>

namespace drawercast::casting {
namespace {

bool before(const Contact& a, const Contact& b) {
    return a.first != b.first ? a.first < b.first : a.second < b.second;
}

} // namespace

void Contacts::renumber(const std::vector<int>& now_at) {
    const auto place = [&](int old) { return now_at[static_cast<std::size_t>(old)]; };
    std::erase_if(all_, [&](const Contact& c) { return place(c.first) < 0 || place(c.second) < 0; });
    for (Contact& c : all_) {
        const auto [first, second] = std::minmax({place(c.first), place(c.second)});
        c.first = first;
        c.second = second;
    }
    if (!std::is_sorted(all_.begin(), all_.end(), before)) std::sort(all_.begin(), all_.end(), before);
}

void Contacts::refresh(const std::vector<int>& changed, const std::vector<Place>& places,
                       const Ground& ground) {
    std::vector<bool> is_changed(places.size(), false);
    for (const int i : changed) is_changed[static_cast<std::size_t>(i)] = true;
    const auto stale = [&](int i) { return is_changed[static_cast<std::size_t>(i)]; };
    if (!changed.empty())
        std::erase_if(all_, [&](const Contact& c) { return stale(c.first) || stale(c.second); });

    const std::size_t kept = all_.size();
    for (const int i : changed) {
        const Place& a = places[static_cast<std::size_t>(i)];
        for (int j = 0; j < static_cast<int>(places.size()); ++j) {
            const Place& b = places[static_cast<std::size_t>(j)];
            if (!near(a.box, b.box, a.reach_mm + b.reach_mm) || j == i || (stale(j) && j < i)) continue;
            const auto meeting = meeting_of(a.standing, b.standing);
            if (!meeting) continue;
            all_.push_back({std::min(i, j), std::max(i, j),
                            shared_by(a.standing, b.standing, *meeting, ground, a.at_edge && b.at_edge)});
        }
    }
    sort_from(kept);
}

void Contacts::sort_from(std::size_t first_new) {
    const auto middle = all_.begin() + static_cast<std::ptrdiff_t>(first_new);
    std::sort(middle, all_.end(), before);
    std::inplace_merge(all_.begin(), middle, all_.end(), before);
}

} // namespace drawercast::casting
