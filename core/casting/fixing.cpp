// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/fixing.h"

#include "shape/gap.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace drawercast::casting {
namespace {

using shape::Vec;

constexpr int steps_across = 40;
constexpr int steps_along = 80;
constexpr double least_apart_mm = 8; ///< two screws closer than this hold no better than one (our guess)
constexpr double worth_apart = 0.6;  ///< of the most there could be

struct Spot {
    Vec at;
    double inside_mm = 0;
};

/// The outline with its longer side along u.
class Lengthwise {
  public:
    explicit Lengthwise(const shape::Contour& outline)
        : outline_(outline), box_(shape::bounds(outline)), along_x_(box_.width() >= box_.height()) {}

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
            const double inside = shape::gap_inside(shape::Contour{{p}, 0}, outline_).mm;
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
    const shape::Contour& outline_;
    shape::Box box_;
    bool along_x_;
};

} // namespace

Fixing fixing_of(const shape::Contour& outline, double inside_mm, double short_mm) {
    const Lengthwise block(outline);
    const Spot deepest = block.deepest();
    const Fixing one{{deepest.at}, true};
    const double along = block.to() - block.from();
    if (along < short_mm) return one;
    const double middle = (block.from() + block.to()) / 2;
    const double step = along / steps_along;
    const double apart = std::max(least_apart_mm, worth_apart * (along - 2 * inside_mm));
    // Slim arms lie less deep than the place where they meet: give way before the two come too close.
    for (int tenths = 10; tenths >= 5; --tenths) {
        const double needed = std::min(inside_mm, deepest.inside_mm) * tenths / 10 - 1e-6;
        const auto first = block.first_from(block.from() + inside_mm, step, middle, needed);
        const auto second = block.first_from(block.to() - inside_mm, -step, middle, needed);
        if (first && second && length(first->at - second->at) >= apart)
            return {{first->at, second->at}, false};
    }
    return one;
}

} // namespace drawercast::casting
