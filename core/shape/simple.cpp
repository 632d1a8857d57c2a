// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/simple.h"

#include "shape/segments.h"

#include <algorithm>

namespace drawercast::shape {
namespace {

bool within(Vec a, Vec b) { return dot(a - b, a - b) <= apart_mm * apart_mm; }

/// Whether the way a–b–c turns back on itself so closely that b is the tip of nothing.
bool spike(Vec a, Vec b, Vec c) {
    if (dot(b - a, c - b) >= 0) return false;
    return within(nearest_on(a, b, c), a) || within(nearest_on(c, a, b), c);
}

struct Side {
    Vec from, to;
    Box box;
    std::size_t index;
};

std::vector<Side> sorted_sides(const Ring& ring) {
    std::vector<Side> sides;
    sides.reserve(ring.size());
    for (std::size_t i = 0; i < ring.size(); ++i) {
        Side side{ring[i], ring[(i + 1) % ring.size()], {}, i};
        side.box.add(side.from);
        side.box.add(side.to);
        sides.push_back(side);
    }
    std::sort(sides.begin(), sides.end(), [](const Side& a, const Side& b) {
        return a.box.min.x != b.box.min.x ? a.box.min.x < b.box.min.x : a.index < b.index;
    });
    return sides;
}

std::optional<Meeting> meeting(const Side& s, const Side& t) {
    for (const Vec p : {s.from, s.to})
        if (within(nearest_on(p, t.from, t.to), p)) return Meeting{p, false};
    for (const Vec p : {t.from, t.to})
        if (within(nearest_on(p, s.from, s.to), p)) return Meeting{p, false};
    if (const auto at = crossing(s.from, s.to, t.from, t.to)) return Meeting{*at, true};
    return std::nullopt;
}

} // namespace

Ring tidied(const Ring& ring) {
    Ring kept;
    kept.reserve(ring.size());
    for (const Vec p : ring) {
        while (kept.size() > 1 && !within(kept.back(), p) && spike(kept[kept.size() - 2], kept.back(), p))
            kept.pop_back();
        if (kept.empty() || !within(kept.back(), p)) kept.push_back(p);
    }
    std::size_t first = 0; // the seam may hide repeated vertices and spikes too
    while (kept.size() - first > 1) {
        const std::size_t last = kept.size() - 1;
        if (within(kept[last], kept[first]) ||
            (last - first > 1 && spike(kept[last - 1], kept[last], kept[first])))
            kept.pop_back();
        else if (last - first > 1 && spike(kept[last], kept[first], kept[first + 1]))
            ++first;
        else
            break;
    }
    kept.erase(kept.begin(), kept.begin() + static_cast<std::ptrdiff_t>(first));
    return kept;
}

std::optional<Meeting> first_meeting(const Ring& ring) {
    const std::size_t n = ring.size();
    const std::vector<Side> sides = sorted_sides(ring);
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = i + 1; j < n && sides[j].box.min.x <= sides[i].box.max.x + apart_mm; ++j) {
            if (!near(sides[i].box, sides[j].box, apart_mm)) continue;
            const std::size_t apart = (sides[i].index + n - sides[j].index) % n;
            if (apart == 1 || apart == n - 1) continue; // neighbors share a corner
            if (auto found = meeting(sides[i], sides[j])) return found;
        }
    return std::nullopt;
}

} // namespace drawercast::shape
