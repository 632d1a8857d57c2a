// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shape/contour.h"

#include <cstdint>
#include <numbers>
#include <random>

/// Seeded outlines for twins and properties. Own conversions from bits: the standard distributions differ by
/// library.
namespace drawercast::shape::testing {

class Dice {
  public:
    explicit Dice(std::uint64_t seed) : bits_(seed) {}
    double real(double low, double high) {
        return low + (high - low) * static_cast<double>(bits_() >> 11) * 0x1p-53;
    }
    int whole(int low, int high) { // both included
        return low + static_cast<int>(bits_() % static_cast<std::uint64_t>(high - low + 1));
    }
    double step(double low, double high, double grain = 0.1) {
        return std::round(real(low, high) / grain) * grain;
    }

  private:
    std::mt19937_64 bits_;
};

/// Simple and usually not convex: `n` corners at even angles, radii between `low` and `high`.
inline Contour star(Dice& dice, int n, double low, double high) {
    Contour out;
    for (int i = 0; i < n; ++i) {
        const double angle = 2 * std::numbers::pi * i / n;
        out.core.push_back(Vec{std::cos(angle), std::sin(angle)} * dice.real(low, high));
    }
    return out;
}

/// Convex, inscribed in a circle.
inline Contour convex_ring(Dice& dice, int n, double radius) {
    Contour out;
    for (int i = 0; i < n; ++i) {
        const double angle = 2 * std::numbers::pi * (i + dice.real(0, 0.8)) / n;
        out.core.push_back(Vec{std::cos(angle), std::sin(angle)} * radius);
    }
    return out;
}

/// One of every family a maker can give; rounded free outlines stay within what can be traced in closed form.
inline Contour any_outline(Dice& dice) {
    switch (dice.whole(0, 5)) {
    case 0:
        return *contour_of(Rectangle{dice.real(5, 80), dice.real(5, 80), 0});
    case 1: {
        const double w = dice.real(5, 80);
        const double h = dice.real(5, 80);
        return *contour_of(Rectangle{w, h, dice.real(0, std::min(w, h) / 2)});
    }
    case 2:
        return *contour_of(Circle{dice.real(2, 60)});
    case 3: {
        const double w = dice.real(2, 30);
        return *contour_of(Capsule{w + dice.real(0, 60), w});
    }
    case 4: {
        Contour round = convex_ring(dice, dice.whole(3, 12), dice.real(5, 40));
        round.round_mm = dice.real(0, 8);
        return round;
    }
    default:
        return star(dice, dice.whole(5, 40), 8, 30);
    }
}

inline Pose any_pose(Dice& dice, double reach) {
    return {{dice.real(-reach, reach), dice.real(-reach, reach)}, dice.real(0, 360)};
}

inline constexpr double pi = std::numbers::pi;

} // namespace drawercast::shape::testing
