// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/fixing.h"

#include "shape/gap.h"

#include <algorithm>
#include <optional>

namespace drawercast::casting {
namespace {

using shape::Vec;

constexpr int steps_across = 40;
constexpr int steps_along = 80;
constexpr double least_apart_mm = 8; ///< two screws closer than this hold no better than one (our guess)
constexpr double worth_apart = 0.6;  ///< of the most there could be
constexpr double pin_inside_mm = 5;  ///< where there is room for it
constexpr double pin_apart_mm = 5;   ///< from a screw, at least: wood as wide as the pin between them

struct Spot {
    Vec at;
    double inside_mm = 0;
};

/// The outline with its longer side along u.
class Lengthwise {
  public:
    Lengthwise(const shape::Contour& outline, const std::vector<shape::Ring>& holes)
        : outline_(outline), box_(shape::bounds(outline)), along_x_(box_.width() >= box_.height()) {
        for (const auto& hole : holes) holes_.push_back({hole, 0});
    }

    double from() const { return along_x_ ? box_.min.x : box_.min.y; }
    double to() const { return along_x_ ? box_.max.x : box_.max.y; }

    /// The deepest point at `u`, the one nearest to the middle of equals.
    Spot deepest_at(double u) const {
        const double middle = along_x_ ? box_.center().y : box_.center().x;
        const double half = (along_x_ ? box_.height() : box_.width()) / 2;
        Spot best;
        for (int k = 0; k < steps_across; ++k) { // 0, 1, −1, 2, −2 … steps from the middle
            const int step = k % 2 == 1 ? (k + 1) / 2 : -(k / 2);
            const double v = middle + half * step * 2 / steps_across;
            const Vec p = along_x_ ? Vec{u, v} : Vec{v, u};
            if (!shape::contains(outline_, p)) continue;
            const double inside = inside_mm(p);
            if (inside > best.inside_mm + 1e-9) best = {p, inside};
        }
        return best;
    }

    Spot deepest() const {
        Spot best;
        for (int k = 0; k < steps_along; ++k) {
            const int step = k % 2 == 1 ? (k + 1) / 2 : -(k / 2);
            const Spot spot = deepest_at((from() + to()) / 2 + (to() - from()) * step / steps_along);
            if (spot.inside_mm > best.inside_mm + 1e-9) best = spot;
        }
        return best;
    }

    /// The first point from `u` on, going by `step`, that is `needed_mm` inside; none before `last`.
    std::optional<Spot> first_from(double u, double step, double last, double needed_mm) const {
        for (; step > 0 ? u < last : u > last; u += step) {
            const Spot spot = deepest_at(u);
            if (spot.inside_mm >= needed_mm) return spot;
        }
        return std::nullopt;
    }

  private:
    double inside_mm(Vec p) const {
        const shape::Contour point{{p}, 0};
        double inside = shape::gap_inside(point, outline_).mm;
        for (const auto& hole : holes_) inside = std::min(inside, shape::gap_between(point, hole).mm);
        return inside;
    }

    const shape::Contour& outline_;
    std::vector<shape::Contour> holes_;
    shape::Box box_;
    bool along_x_;
};

/// The two places, or the one.
std::vector<Spot> spots_of(const Lengthwise& block) {
    const Spot deepest = block.deepest();
    const double along = block.to() - block.from();
    if (along < one_screw_mm) return {deepest};
    const double middle = (block.from() + block.to()) / 2;
    const double step = along / steps_along;
    const double apart = std::max(least_apart_mm, worth_apart * (along - 2 * screw_inside_mm));
    // Slim arms lie less deep than the place where they meet: give way before the two come too close.
    for (int tenths = 10; tenths >= 5; --tenths) {
        const double needed = std::min(screw_inside_mm, deepest.inside_mm) * tenths / 10 - 1e-6;
        const auto first = block.first_from(block.from() + screw_inside_mm, step, middle, needed);
        const auto second = block.first_from(block.to() - screw_inside_mm, -step, middle, needed);
        if (first && second && length(first->at - second->at) >= apart) return {*first, *second};
    }
    return {deepest};
}

bool holds(const Spot& spot, double diameter_mm) {
    return spot.inside_mm >= diameters_inside * diameter_mm - 1e-6;
}

/// The place furthest from `from` that a pin may have.
std::optional<Vec> pin_beside(const Lengthwise& block, Vec from) {
    const double step = (block.to() - block.from()) / steps_along;
    for (const double needed : {pin_inside_mm, diameters_inside * pin_mm}) {
        std::optional<Vec> best;
        const auto take = [&](const std::optional<Spot>& spot) {
            if (!spot || length(spot->at - from) < pin_apart_mm) return;
            if (!best || length(spot->at - from) > length(*best - from) + 1e-6) best = spot->at;
        };
        take(block.first_from(block.from() + step, step, block.to(), needed - 1e-6));
        take(block.first_from(block.to() - step, -step, block.from(), needed - 1e-6));
        if (best) return best;
    }
    return std::nullopt;
}

} // namespace

Fixing fixing_of(const shape::Contour& outline, const std::vector<shape::Ring>& holes) {
    const Lengthwise block(outline, holes);
    const auto spots = spots_of(block);
    const auto all_hold = [&](double diameter_mm) {
        return std::all_of(spots.begin(), spots.end(),
                           [&](const Spot& spot) { return holds(spot, diameter_mm); });
    };
    Fixing fixing;
    if (all_hold(thin_screw_mm)) {
        fixing.diameter_mm = all_hold(screw_mm) ? screw_mm : thin_screw_mm;
        for (const Spot& spot : spots) fixing.screws.push_back(spot.at);
    } else
        for (const Spot& spot : spots)
            if (holds(spot, pin_mm)) fixing.pins.push_back(spot.at);
    const auto& held = fixing.screws.empty() ? fixing.pins : fixing.screws;
    if (held.size() == 1)
        if (const auto pin = pin_beside(block, held.front())) fixing.pins.push_back(*pin);
    return fixing;
}

} // namespace drawercast::casting
