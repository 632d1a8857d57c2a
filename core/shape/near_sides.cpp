// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/near_sides.h"

#include <array>

namespace drawercast::shape {
namespace {

struct Side {
    Vec from, to;
    Box box;
};

Box box_of(Vec a, Vec b) {
    return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

double squared_between(const Box& a, const Box& b) {
    const double dx = std::max(std::max(a.min.x - b.max.x, b.min.x - a.max.x), 0.0);
    const double dy = std::max(std::max(a.min.y - b.max.y, b.min.y - a.max.y), 0.0);
    return dx * dx + dy * dy;
}

void offer(NearSides& best, Vec on_a, Vec on_b) {
    const Vec d = on_a - on_b;
    const double squared = dot(d, d);
    if (squared > best.squared || (best.found && squared == best.squared)) return;
    best = {true, squared, on_a, on_b};
}

void compare(NearSides& best, const Side& s, const Side& t) {
    offer(best, s.from, nearest_on(s.from, t.from, t.to));
    offer(best, s.to, nearest_on(s.to, t.from, t.to));
    offer(best, nearest_on(t.from, s.from, s.to), t.from);
    offer(best, nearest_on(t.to, s.from, s.to), t.to);
    if (near(s.box, t.box))
        if (const auto at = crossing(s.from, s.to, t.from, t.to)) best = {true, 0, *at, *at};
}

constexpr std::size_t batch = 64;

/// Up to `batch` sides of a core from `next` on that come within the best distance of `box`.
struct Batch {
    std::array<Side, batch> sides;
    std::size_t count = 0;
    Box box;

    void fill(std::span<const Vec> core, std::size_t& next, const Box& other, double squared) {
        count = 0;
        box = {};
        for (const std::size_t end = sides_of(core); next < end && count < batch; ++next) {
            Side& side = sides[count];
            side.from = core[next];
            side.to = side_end(core, next);
            side.box = box_of(side.from, side.to);
            if (squared_between(side.box, other) > squared) continue;
            box.add(side.box);
            ++count;
        }
    }
};

/// A distance that the cores surely do not exceed: from the vertex of b nearest to a's middle to a's nearest
/// to that.
double at_most_squared(std::span<const Vec> a, const Box& box_a, std::span<const Vec> b) {
    const auto nearest = [](std::span<const Vec> core, Vec p) {
        Vec best = core[0];
        for (const Vec q : core)
            if (dot(q - p, q - p) < dot(best - p, best - p)) best = q;
        return best;
    };
    const Vec q = nearest(b, box_a.center());
    const Vec d = nearest(a, q) - q;
    return dot(d, d) * (1 + 1e-12) + touching_mm * touching_mm; // so that rounding can't lose that very pair
}

} // namespace

NearSides nearest_sides(std::span<const Vec> a, const Box& box_a, std::span<const Vec> b, double limit_mm) {
    NearSides best;
    const double limit = limit_mm + touching_mm; // what is exactly at the limit counts
    best.squared = limit * limit;
    if (!(limit < any_distance)) best.squared = at_most_squared(a, box_a, b);
    Batch of_b;
    for (std::size_t next = 0; next < sides_of(b) && best.squared > 0;) {
        of_b.fill(b, next, box_a, best.squared);
        if (of_b.count == 0) continue;
        for (std::size_t i = 0; i < sides_of(a); ++i) {
            Side side{a[i], side_end(a, i), {}};
            side.box = box_of(side.from, side.to);
            if (squared_between(side.box, of_b.box) > best.squared) continue;
            for (std::size_t k = 0; k < of_b.count; ++k)
                if (squared_between(side.box, of_b.sides[k].box) <= best.squared)
                    compare(best, side, of_b.sides[k]);
            if (best.squared == 0 && best.found) return best;
        }
    }
    return best;
}

Gap gap_from(const NearSides& near, double round_a, double round_b) {
    const double apart = std::sqrt(near.squared);
    const double mm = apart - (round_a + round_b); // the same whichever outline comes first
    const Vec toward = apart > 0 ? (near.b - near.a) * (1 / apart) : Vec{};
    if (mm > touching_mm) return {mm, near.a + toward * round_a, near.b - toward * round_b};
    // from one core to the other: the first outline ends at `last`, the second begins at `first`
    const double first = std::max(0.0, apart - round_b);
    const double last = std::min(apart, round_a);
    const Vec middle = near.a + toward * ((first + last) / 2);
    return {0, middle, middle};
}

} // namespace drawercast::shape
