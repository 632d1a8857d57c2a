// SPDX-License-Identifier: GPL-3.0-or-later
#include "canvas/word_room.h"

#include "base/demand.h"

#include <algorithm>

namespace drawercast::app {

namespace {

double shared_area(const shape::Box& a, const shape::Box& b) {
    const double across = std::min(a.max.x, b.max.x) - std::max(a.min.x, b.min.x);
    const double down = std::min(a.max.y, b.max.y) - std::max(a.min.y, b.min.y);
    return across > 0 && down > 0 ? across * down : 0;
}

} // namespace

double WordRoom::harm(const shape::Box& box) const {
    constexpr double word = 20, unseen = 40; // so much worse than covering as much of a pocket
    const double area = box.width() * box.height();
    double harm = unseen * (area - shared_area(box, seen_));
    for (const auto& other : taken_.words) harm += word * shared_area(box, other);
    for (const auto& other : taken_.pockets) harm += shared_area(box, other);
    return harm;
}

shape::Box WordRoom::place(const std::vector<shape::Vec>& middles, shape::Vec size) {
    DRAWERCAST_DEMAND(!middles.empty(), "a place to choose from");
    shape::Box best;
    double least = 0;
    for (const shape::Vec middle : middles) {
        const shape::Box box{middle - size * 0.5, middle + size * 0.5};
        const double now = harm(box);
        if (!best.empty() && !(now < least)) continue;
        best = box;
        least = now;
    }
    keep_off(best);
    return best;
}

} // namespace drawercast::app
