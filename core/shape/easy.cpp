// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/easy.h"

#include "base/number.h"
#include "shape/gap.h"
#include "shape/hull.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace drawercast::shape {

namespace {

constexpr double worth = 0.02; // of the upright rectangle's area
constexpr int even_steps = 64;
constexpr double rounded_up_mm = 2e-6; // corners are grained: never inside the outline for that

double area_of(const Box& box) { return box.width() * box.height(); }

Polygon upright(const Box& box) {
    const Box b = box.grown(rounded_up_mm);
    return {{{grained_at(b.min), 0},
             {grained_at({b.max.x, b.min.y}), 0},
             {grained_at(b.max), 0},
             {grained_at({b.min.x, b.max.y}), 0}}};
}

/// A side of the least rectangle lies on one of the hull's (Freeman and Shapira 1975).
Polygon least_turned(const Ring& hull) {
    std::optional<double> least;
    Polygon best;
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const Vec side = hull[(i + 1) % hull.size()] - hull[i];
        const Vec along = side * (1 / length(side)), across{-along.y, along.x};
        Box box;
        for (const Vec p : hull) box.add(Vec{dot(p, along), dot(p, across)});
        if (least && area_of(box) >= *least) continue;
        least = area_of(box);
        const Box b = box.grown(rounded_up_mm);
        const auto back = [&](double a, double c) { return grained_at(along * a + across * c); };
        best = {{{back(b.min.x, b.min.y), 0},
                 {back(b.max.x, b.min.y), 0},
                 {back(b.max.x, b.max.y), 0},
                 {back(b.min.x, b.max.y), 0}}};
    }
    return best;
}

/// The boxes of what lies on either side of x = cut.
struct Parts {
    Box low, high;
    double area() const { return area_of(low) + area_of(high); }
};

/// A side that runs along the cut itself belongs to neither.
Parts parted(const Ring& ring, double cut) {
    Parts parts;
    const auto add_beyond = [cut](Box& box, Vec a, Vec b, bool high) {
        const auto beyond = [&](Vec p) { return high ? p.x > cut : p.x < cut; };
        if (!beyond(a) && !beyond(b)) return;
        const auto on_cut = [&] { return Vec{cut, a.y + (b.y - a.y) * (cut - a.x) / (b.x - a.x)}; };
        for (const Vec p : {a, b}) box.add(beyond(p) ? p : on_cut());
    };
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Vec a = ring[i], b = ring[(i + 1) % ring.size()];
        add_beyond(parts.low, a, b, false);
        add_beyond(parts.high, a, b, true);
    }
    return parts;
}

Parts best_parts(const Ring& ring, const Box& box) {
    std::vector<double> cuts;
    for (int i = 1; i < even_steps; ++i) cuts.push_back(box.min.x + box.width() * i / even_steps);
    constexpr std::size_t most_corners = 400; // more than that are an arc's chords: the even steps do
    for (std::size_t i = 0; i < ring.size(); i += 1 + ring.size() / most_corners)
        if (ring[i].x > box.min.x && ring[i].x < box.max.x) cuts.push_back(ring[i].x);
    Parts best = parted(ring, box.center().x);
    for (const double cut : cuts)
        if (const Parts parts = parted(ring, cut); parts.area() < best.area()) best = parts;
    return best;
}

/// Both boxes as one outline; they meet in a shared piece of the cut, since the outline crosses it.
Polygon joined(const Parts& parts, bool along_x) {
    const Box l = parts.low.grown(rounded_up_mm), h = parts.high.grown(rounded_up_mm);
    const double cut = parts.low.max.x;
    Ring ring{l.min};
    ring.reserve(8);
    if (l.min.y != h.min.y) {
        ring.push_back({cut, l.min.y});
        ring.push_back({cut, h.min.y});
    }
    ring.push_back({h.max.x, h.min.y});
    ring.push_back(h.max);
    if (l.max.y != h.max.y) {
        ring.push_back({cut, h.max.y});
        ring.push_back({cut, l.max.y});
    }
    ring.push_back({l.min.x, l.max.y});
    if (!along_x) {
        for (Vec& p : ring) p = {p.y, p.x};
        std::reverse(ring.begin(), ring.end());
    }
    Polygon polygon;
    for (const Vec p : ring) polygon.corners.push_back({grained_at(p), 0});
    return polygon;
}

Polygon two_rectangles(const Ring& ring, const Box& box) {
    Ring turned;
    for (const Vec p : ring) turned.push_back({p.y, p.x});
    const Parts across = best_parts(ring, box);
    const Parts up = best_parts(turned, {{box.min.y, box.min.x}, {box.max.y, box.max.x}});
    return across.area() <= up.area() ? joined(across, true) : joined(up, false);
}

struct Disc {
    Vec middle;
    double radius = 0;
    bool holds(Vec p) const { return length(p - middle) <= radius * (1 + 1e-12) + 1e-9; }
};

Disc through(Vec a, Vec b) { return {(a + b) * 0.5, length(b - a) / 2}; }

Disc through(Vec a, Vec b, Vec c) {
    const Vec p = b - a, q = c - a;
    const double twice = 2 * cross(p, q);
    if (twice == 0) return through(a, length(p) > length(q) ? b : c);
    const Vec to{(q.y * dot(p, p) - p.y * dot(q, q)) / twice, (p.x * dot(q, q) - q.x * dot(p, p)) / twice};
    return {a + to, length(to)};
}

/// Welzl 1991, in the hull's own order: a hull is short enough for that.
Disc least_disc(const Ring& hull) {
    Disc disc{hull.front(), 0};
    for (std::size_t i = 1; i < hull.size(); ++i) {
        if (disc.holds(hull[i])) continue;
        disc = {hull[i], 0};
        for (std::size_t j = 0; j < i; ++j) {
            if (disc.holds(hull[j])) continue;
            disc = through(hull[i], hull[j]);
            for (std::size_t k = 0; k < j; ++k)
                if (!disc.holds(hull[k])) disc = through(hull[i], hull[j], hull[k]);
        }
    }
    return disc;
}

/// Four quarter arcs, a whisker larger so that their chords hold what touches the circle.
Polygon round(const Disc& disc) {
    const double r = disc.radius + chord_sagitta_mm + rounded_up_mm;
    const double bulge = grained(r * (1 - std::sqrt(0.5)));
    const Vec m = disc.middle;
    return {{{grained_at(m + Vec{r, 0}), bulge},
             {grained_at(m + Vec{0, r}), bulge},
             {grained_at(m - Vec{r, 0}), bulge},
             {grained_at(m - Vec{0, r}), bulge}}};
}

} // namespace

std::vector<EasyShape> easy_shapes(const Contour& contour) {
    const Ring ring = traced(contour);
    const Box box = bounds(ring);
    std::vector<EasyShape> shapes;
    if (ring.size() < 3 || !(area_of(box) > 0)) return shapes;
    const double own = area(contour);
    const auto offer = [&](EasyShape::Kind kind, const Polygon& polygon, double worth_it) {
        const auto easy = contour_of(polygon);
        if (!easy) return;
        const double more = area(*easy) - own;
        const bool saves = std::all_of(shapes.begin(), shapes.end(), [&](const EasyShape& other) {
            return more < other.more_mm2 - worth_it * area_of(box);
        });
        if (!saves && !shapes.empty()) return;
        shapes.push_back({kind, polygon, more, std::max(0.0, -gap_inside(*easy, contour).mm)});
    };
    const Ring hull = hull_of(ring);
    using Kind = EasyShape::Kind;
    offer(Kind::rectangle, upright(box), worth);
    offer(Kind::turned_rectangle, least_turned(hull), worth);
    offer(Kind::two_rectangles, two_rectangles(ring, box), worth);
    offer(Kind::disc, round(least_disc(hull)), 0);
    std::stable_sort(shapes.begin(), shapes.end(),
                     [](const auto& a, const auto& b) { return a.more_mm2 < b.more_mm2; });
    return shapes;
}

} // namespace drawercast::shape
