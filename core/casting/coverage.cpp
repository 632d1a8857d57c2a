// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/coverage.h"

#include <algorithm>
#include <utility>

namespace drawercast::casting {
namespace {

using shape::Box;
using shape::Vec;

constexpr int window_owner = -1;
constexpr int opening_owner = -2;
constexpr double outside_mm = 1e-6; ///< of the window, past any rounding

Vec swap_axes(Vec p) { return {p.y, p.x}; }
Box swap_axes(const Box& box) { return {swap_axes(box.min), swap_axes(box.max)}; }

/// Sorts what is nearly in order already; tells of each pair that changes places, the later one first.
template <class Items, class Before, class Swapped>
void settle(Items& items, const Before& before, const Swapped& swapped) {
    for (std::size_t i = 1; i < items.size(); ++i) {
        const auto moved = items[i];
        std::size_t j = i;
        for (; j > 0 && before(moved, items[j - 1]); --j) {
            swapped(moved, items[j - 1]);
            items[j] = items[j - 1];
        }
        items[j] = moved;
    }
}
template <class Items, class Before>
void settle(Items& items, const Before& before) {
    settle(items, before, [](const auto&, const auto&) {});
}

} // namespace

double Coverage::area(std::span<const Placed> footprints, const Field& field, Counting counting) {
    window_ = field.window;
    if (window_.empty()) return 0;
    // Along the shorter side fewer paths come by.
    swapped_ = window_.height() < window_.width();
    if (swapped_) window_ = swap_axes(window_);
    counting_ = counting;
    has_opening_ = field.opening != nullptr;
    outside_ = field.outside;
    winding_.assign(footprints.size(), 0);
    sides_.clear();
    for (std::size_t i = 0; i < footprints.size(); ++i)
        for (const shape::Ring& path : footprints[i].footprint->paths)
            add_path(path, footprints[i].turn, footprints[i].at, static_cast<int>(i));
    if (sides_.empty()) return 0;
    if (has_opening_)
        for (const shape::Ring& path : field.opening->paths) add_path(path, {}, {}, opening_owner);
    add_window();

    std::sort(sides_.begin(), sides_.end(), [](const Side& a, const Side& b) { return a.from < b.from; });
    stops_.clear();
    for (const Side& side : sides_) {
        stops_.push_back(side.from);
        stops_.push_back(side.to);
    }
    std::sort(stops_.begin(), stops_.end());
    stops_.erase(std::unique(stops_.begin(), stops_.end()), stops_.end());

    double sum = 0;
    std::size_t next = 0;
    strip_.clear();
    for (std::size_t i = 0; i + 1 < stops_.size(); ++i) {
        enter_strip(stops_[i], stops_[i + 1], next);
        if (strip_.size() > 2) sum += strip_area(stops_[i], stops_[i + 1]); // more than the window
    }
    return sum;
}

void Coverage::add_path(const shape::Ring& path, const shape::Turn& turn, Vec at, int owner) {
    Vec last = turn(path.back()) + at;
    for (const Vec p : path) {
        const Vec here = turn(p) + at;
        add_side(last, here, owner);
        last = here;
    }
}

void Coverage::add_side(Vec a, Vec b, int owner) {
    if (swapped_) {
        a = swap_axes(a);
        b = swap_axes(b);
    }
    // Going right, the inside is above; swapped axes mirror the plane.
    int step = swapped_ ? -1 : 1;
    if (a.x > b.x) {
        std::swap(a, b);
        step = -step;
    }
    const double from = std::max(a.x, window_.min.x);
    const double to = std::min(b.x, window_.max.x);
    if (!(from < to) || (a.y >= window_.max.y && b.y >= window_.max.y)) return;
    Side side{from, to, 0, 0, owner, step};
    if (a.y <= window_.min.y && b.y <= window_.min.y) {
        side.height = window_.min.y; // below the window only its winding matters
    } else {
        side.slope = (b.y - a.y) / (b.x - a.x);
        side.height = a.y + side.slope * (from - a.x);
    }
    sides_.push_back(side);
}

void Coverage::add_window() {
    const double width[] = {window_.min.x, window_.max.x};
    sides_.push_back({width[0], width[1], window_.min.y, 0, window_owner, 1});
    sides_.push_back({width[0], width[1], window_.max.y, 0, window_owner, -1});
}

bool Coverage::upward(const Crossing& a, const Crossing& b) {
    return a.left != b.left ? a.left < b.left : a.right < b.right;
}

/// Sides that go on keep their order but where they crossed, so that sorting is nearly free.
void Coverage::enter_strip(double from, double to, std::size_t& next) {
    std::size_t kept = 0;
    for (const Crossing& crossing : strip_)
        if (crossing.side->to > from) strip_[kept++] = {crossing.right, 0, 0, crossing.side};
    strip_.resize(kept);
    for (; next < sides_.size() && sides_[next].from <= from; ++next)
        strip_.push_back({sides_[next].height, 0, 0, &sides_[next]});
    for (Crossing& crossing : strip_) crossing.right = crossing.side->at(to);
    settle(strip_, upward);
}

double Coverage::strip_area(double from, double to) {
    for (std::size_t i = 1; i < strip_.size(); ++i)
        if (strip_[i].right < strip_[i - 1].right) return split_strip_area(from, to);
    return (to - from) * counted_length(0.5);
}

/// Sides cross in this strip: every length is linear between the crossings.
double Coverage::split_strip_area(double from, double to) {
    find_splits();
    double sum = 0;
    for (std::size_t i = 0; i + 1 < splits_.size(); ++i) {
        const double share = splits_[i + 1] - splits_[i];
        if (share > 0) sum += share * counted_length((splits_[i] + splits_[i + 1]) / 2);
    }
    return (to - from) * sum;
}

/// Shares of the strip at which sides cross: what comes in one order and leaves in another. Crossings outside
/// the window change nothing in it.
void Coverage::find_splits() {
    splits_.assign({0, 1});
    leaving_ = strip_;
    settle(
        leaving_, [](const Crossing& a, const Crossing& b) { return a.right < b.right; },
        [this](const Crossing& upper, const Crossing& lower) {
            const double before = upper.left - lower.left; // ≥ 0: in order
            const double after = lower.right - upper.right;
            const double share = before / (before + after);
            const double height = lower.left + (lower.right - lower.left) * share;
            if (height >= window_.min.y - outside_mm && height <= window_.max.y + outside_mm)
                splits_.push_back(share);
        });
    std::sort(splits_.begin(), splits_.end());
}

/// Counted length at that share of a strip's width; the mean of a part of it whose sides do not cross.
double Coverage::counted_length(double share) {
    for (Crossing& s : strip_) s.between = s.left + (s.right - s.left) * share;
    settle(strip_, [](const Crossing& a, const Crossing& b) { return a.between < b.between; });
    std::fill(winding_.begin(), winding_.end(), 0);
    int depth = 0;
    int in_window = 0;
    int in_opening = 0;
    double last = 0;
    double sum = 0;
    for (const Crossing& s : strip_) {
        const double here = s.between;
        if (depth > 0 && in_window > 0 && (!has_opening_ || (in_opening > 0) != outside_))
            sum += counted(depth) * (here - last);
        last = here;
        const int owner = s.side->owner;
        if (owner == window_owner) {
            in_window += s.side->step;
        } else if (owner == opening_owner) {
            in_opening += s.side->step;
        } else {
            int& winding = winding_[static_cast<std::size_t>(owner)];
            const bool was = winding > 0;
            winding += s.side->step;
            depth += static_cast<int>(winding > 0) - static_cast<int>(was);
        }
    }
    return sum;
}

double Coverage::counted(int depth) const {
    switch (counting_) {
    case Counting::any:
        return 1;
    case Counting::shared:
        return depth * (depth - 1) / 2.0;
    case Counting::crowded:
        return (depth - 1) * (depth - 2) / 2.0;
    }
    return 0;
}

double union_area(const Footprint& footprint) {
    const Placed placed{&footprint, {}, {}};
    return Coverage().area({&placed, 1}, {footprint.box}, Counting::any);
}

} // namespace drawercast::casting
