// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/snap.h"

#include "shape/boxes.h"

#include <cmath>
#include <tuple>

namespace drawercast::layout {

namespace {

using shape::Box;
using shape::Vec;

/// A box seen along one direction: `lo`…`hi` in it, `from`…`to` across it.
struct Span {
    double lo, hi, from, to;
    double middle() const { return (lo + hi) / 2; }
    double across() const { return (from + to) / 2; }
};

Span span_of(const Box& box, bool along_x) {
    return along_x ? Span{box.min.x, box.max.x, box.min.y, box.max.y}
                   : Span{box.min.y, box.max.y, box.min.x, box.max.x};
}

bool side_by_side(const Span& a, const Span& b) { return a.from < b.to && b.from < a.to; }

/// One direction's search: offers are kept when they are of an earlier reason, or nearer of the same.
class Search {
  public:
    Search(bool along_x, double radius_mm) : along_x_(along_x), radius_mm_(radius_mm) {}

    struct Wall {
        double from, to, across;
    };
    void offer(SnapReason reason, double shift, double line, double guide_from, double guide_to,
               const std::vector<Wall>& walls = {}) {
        if (!(std::abs(shift) <= radius_mm_)) return;
        const double reach = std::abs(guide_to - guide_from);
        if (best_ && std::tuple(best_->reason, std::abs(best_->shift_mm), reach_) <=
                         std::tuple(reason, std::abs(shift), reach))
            return;
        reach_ = reach;
        const auto point = [&](double across) { return along_x_ ? Vec{line, across} : Vec{across, line}; };
        best_ = SnapAxis{shift, reason, point(guide_from), point(guide_to), {}};
        for (const Wall& wall : walls) {
            const auto end = [&](double along) {
                return along_x_ ? Vec{along, wall.across} : Vec{wall.across, along};
            };
            best_->walls.emplace_back(end(wall.from), end(wall.to));
        }
    }
    const std::optional<SnapAxis>& best() const { return best_; }

  private:
    bool along_x_;
    double radius_mm_;
    std::optional<SnapAxis> best_;
    double reach_ = 0; // of its guide
};

void offer_edges(Search& search, const Span& self, const Span& insert, double edge_mm) {
    const double low = insert.lo + edge_mm;
    const double high = insert.hi - edge_mm;
    search.offer(SnapReason::edge, low - self.lo, low, self.from, self.to);
    search.offer(SnapReason::edge, high - self.hi, high, self.from, self.to);
}

void offer_wall(Search& search, const Span& self, const Span& other, double wall_mm) {
    if (!side_by_side(self, other)) return;
    const double after = other.hi + wall_mm;
    const double before = other.lo - wall_mm;
    const double from = std::max(self.from, other.from);
    const double to = std::min(self.to, other.to);
    search.offer(SnapReason::wall, after - self.lo, after, from, to);
    search.offer(SnapReason::wall, before - self.hi, before, from, to);
}

void offer_in_line(Search& search, const Span& self, const Span& other) {
    const double from = std::min(self.across(), other.across());
    const double to = std::max(self.across(), other.across());
    search.offer(SnapReason::centers_in_line, other.middle() - self.middle(), other.middle(), from, to);
    for (const double line : {other.lo, other.hi})
        for (const double own : {self.lo, self.hi})
            search.offer(SnapReason::sides_in_line, line - own, line, std::min(self.from, other.from),
                         std::max(self.to, other.to));
}

double shared_across(const Span& a, const Span& b) {
    return (std::max(a.from, b.from) + std::min(a.to, b.to)) / 2;
}

/// Between the nearest neighbor (or the insert's edge) on either side, and one wall further on as wide as the
/// wall beyond that neighbor. Between both edges there is nothing to be equal to.
void offer_equal_walls(Search& search, const Span& self, const std::vector<Span>& others,
                       const Span& insert) {
    const Span* before = nullptr;
    const Span* after = nullptr;
    for (const Span& other : others) {
        if (!side_by_side(self, other)) continue;
        if (other.middle() < self.middle() && (before == nullptr || other.hi > before->hi)) before = &other;
        if (other.middle() > self.middle() && (after == nullptr || other.lo < after->lo)) after = &other;
    }
    if (before != nullptr || after != nullptr) {
        const double low = before != nullptr ? before->hi : insert.lo;
        const double high = after != nullptr ? after->lo : insert.hi;
        const double middle = (low + high) / 2, half = (self.hi - self.lo) / 2;
        if (high - low >= 2 * half)
            search.offer(SnapReason::equal_walls, middle - self.middle(), middle, self.from, self.to,
                         {{low, middle - half, shared_across(self, before != nullptr ? *before : self)},
                          {middle + half, high, shared_across(self, after != nullptr ? *after : self)}});
    }
    for (const Span& other : others) { // a row goes on with the wall it has
        if (before != nullptr && &other != before && side_by_side(other, *before) && other.hi < before->lo) {
            const double next = before->hi + (before->lo - other.hi);
            search.offer(SnapReason::equal_walls, next - self.lo, next, self.from, self.to,
                         {{other.hi, before->lo, shared_across(other, *before)},
                          {before->hi, next, shared_across(self, *before)}});
        }
        if (after != nullptr && &other != after && side_by_side(other, *after) && other.lo > after->hi) {
            const double next = after->lo - (other.lo - after->hi);
            search.offer(SnapReason::equal_walls, next - self.hi, next, self.from, self.to,
                         {{next, after->lo, shared_across(self, *after)},
                          {after->hi, other.lo, shared_across(other, *after)}});
        }
    }
}

std::optional<SnapAxis> along(const SnapIn& in, bool along_x) {
    Search search(along_x, in.radius_mm);
    const Span self = span_of(in.moving, along_x);
    std::vector<Span> others;
    for (const auto& neighbor : in.neighbors) others.push_back(span_of(neighbor.box, along_x));

    offer_edges(search, self, span_of(in.insert, along_x), in.edge_mm);
    for (std::size_t i = 0; i < others.size(); ++i)
        offer_wall(search, self, others[i], in.neighbors[i].wall_mm);
    offer_equal_walls(search, self, others, span_of(in.insert, along_x));
    for (const Span& other : others) offer_in_line(search, self, other);
    if (in.grid_mm > 0) {
        const double line = std::round(self.lo / in.grid_mm) * in.grid_mm;
        search.offer(SnapReason::grid, line - self.lo, line, self.from, self.to);
    }
    return search.best();
}

} // namespace

Phrase words_of(SnapReason reason) {
    switch (reason) {
    case SnapReason::edge:
        return phrase("edge as the shop wants it");
    case SnapReason::wall:
        return phrase("wall as the shop wants it");
    case SnapReason::equal_walls:
        return phrase("equal walls");
    case SnapReason::centers_in_line:
        return phrase("centers in line");
    case SnapReason::sides_in_line:
        return phrase("sides in line");
    case SnapReason::grid:
        return phrase("grid");
    }
    return {};
}

Snap snapped(const SnapIn& in) {
    const auto x = along(in, true);
    if (!x) return {x, along(in, false)};
    SnapIn beside = in; // so that guides meet what is moved where it ends up
    beside.moving = shape::moved(in.moving, {x->shift_mm, 0});
    const auto y = along(beside, false);
    if (!y) return {x, y};
    beside.moving = shape::moved(in.moving, {0, y->shift_mm});
    return {along(beside, true), y};
}

} // namespace drawercast::layout
