// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/boundary.h"

#include "base/demand.h"

#include <cmath>
#include <numbers>

namespace drawercast::layout {

namespace {

using shape::Vec;

constexpr double full_turn = 2 * std::numbers::pi;

/// Collects pieces of straight sides and arcs.
class Walk {
  public:
    explicit Walk(double step_mm) : step_mm_(step_mm) {}

    void side(Vec a, Vec b) {
        const Vec along = b - a;
        const double whole = length(along);
        const Vec outward{along.y / whole, -along.x / whole}; // of a counter-clockwise ring
        split(whole, [&](double part) { return std::pair(a + along * part, outward); });
    }
    void arc(Vec center, double radius, double from, double turn) {
        split(radius * turn, [&](double part) {
            const Vec outward{std::cos(from + turn * part), std::sin(from + turn * part)};
            return std::pair(center + outward * radius, outward);
        });
    }
    std::vector<BoundaryPiece> take() { return std::move(pieces_); }

  private:
    template <class Place>
    void split(double whole, Place place) {
        if (!(whole > 0)) return;
        const int count = static_cast<int>(std::ceil(whole / step_mm_));
        for (int i = 0; i < count; ++i) {
            const auto [middle, outward] = place((i + 0.5) / count);
            pieces_.push_back({middle, outward, whole / count});
        }
    }

    double step_mm_;
    std::vector<BoundaryPiece> pieces_;
};

/// Sides of the core moved out by the round radius, and an arc about each of its vertices. A segment is
/// walked there and back, as a ring of two.
void walk_convex(const shape::Contour& contour, Walk& walk) {
    const auto& core = contour.core;
    const std::size_t n = core.size();
    const auto outward = [&](std::size_t i) {
        const Vec along = core[(i + 1) % n] - core[i % n];
        return Vec{along.y, -along.x} * (1 / length(along));
    };
    for (std::size_t i = 0; i < n; ++i) {
        const Vec out = outward(i) * contour.round_mm;
        walk.side(core[i] + out, core[(i + 1) % n] + out);
        const Vec before = outward(i);
        const Vec after = outward(i + 1);
        const double from = std::atan2(before.y, before.x);
        const double turn = std::fmod(std::atan2(after.y, after.x) - from + full_turn, full_turn);
        const bool straight_on =
            turn > 0.75 * full_turn; // a turn of −0 in floating point; convex ones are at most half
        walk.arc(core[(i + 1) % n], contour.round_mm, from, straight_on ? 0 : turn);
    }
}

} // namespace

std::vector<BoundaryPiece> boundary_of(const shape::Contour& contour, double step_mm) {
    DRAWERCAST_DEMAND(step_mm > 0, "a boundary is taken in steps");
    Walk walk(step_mm);
    if (contour.core.size() == 1) {
        walk.arc(contour.core[0], contour.round_mm, 0, full_turn);
    } else if (shape::convex(contour)) {
        walk_convex(contour, walk);
    } else {
        const shape::Ring ring = shape::traced(contour);
        for (std::size_t i = 0; i < ring.size(); ++i) walk.side(ring[i], ring[(i + 1) % ring.size()]);
    }
    return walk.take();
}

} // namespace drawercast::layout
