// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/layout/scene.h"

#include <cmath>
#include <cstdint>
#include <numbers>
#include <random>

namespace drawercast::layout::testing {

/// The same numbers on every machine: the standard's distributions are not.
class Dice {
  public:
    explicit Dice(std::uint64_t seed) : random_(seed) {}
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(random_() >> 11) * 0x1p-53;
    }
    int below(int count) { return static_cast<int>(random_() % static_cast<std::uint64_t>(count)); }
    bool toss(double chance) { return between(0, 1) < chance; }
    double tenths(double low, double high) { return std::round(between(low, high) * 10) / 10; }

  private:
    std::mt19937_64 random_;
};

inline shape::Polygon star(Dice& dice, int corners, double least_mm, double most_mm) {
    shape::Polygon polygon;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * std::numbers::pi * i / corners;
        const double radius = dice.between(least_mm, most_mm);
        polygon.corners.push_back({{radius * std::cos(angle), radius * std::sin(angle)}, 0});
    }
    return polygon;
}

inline shape::Given any_outline(Dice& dice) {
    const double w = dice.tenths(12, 60);
    const double h = dice.tenths(12, 60);
    switch (dice.below(5)) {
    case 0:
        return shape::Rectangle{w, h, 0};
    case 1:
        return shape::Rectangle{w, h, dice.tenths(1, 5)};
    case 2:
        return shape::Circle{w};
    case 3:
        return shape::Capsule{std::max(w, h), std::min(w, h)};
    default:
        return star(dice, 3 + dice.below(12), 6, 25);
    }
}

/// An object of any kind: one or two levels, through, lying; masses and heights that sometimes are too much.
inline job::Object any_object(Dice& dice, int number) {
    std::vector<job::Level> levels;
    switch (dice.below(5)) {
    case 0:
        levels = {through(any_outline(dice))};
        break;
    case 1:
        levels = {
            lying({{dice.tenths(10, 40), dice.tenths(10, 30)}, {dice.tenths(10, 40), dice.tenths(10, 30)}},
                  dice.tenths(-4, 20))};
        break;
    case 2:
        levels = {
            sunk(any_outline(dice), dice.tenths(5, 25)),
            sunk(any_outline(dice), dice.tenths(25, 58), {{dice.tenths(-5, 5), dice.tenths(-5, 5)}, 30})};
        break;
    default:
        levels = {sunk(any_outline(dice), dice.tenths(5, 58))};
    }
    job::Object object = object_of("i" + std::to_string(number), std::move(levels));
    object.mass_g = dice.toss(0.2) ? dice.tenths(900, 3000) : dice.tenths(20, 900);
    object.height_mm = dice.tenths(10, 70);
    return object;
}

inline shape::Pose any_pose(Dice& dice, double width, double height) {
    const double turn = dice.toss(0.5) ? 90.0 * dice.below(4) : 15.0 * dice.below(24);
    return {{dice.tenths(0, width), dice.tenths(0, height)}, turn};
}

inline job::Pocket any_pocket(Dice& dice, const job::Object& object, int n, double width, double height) {
    job::Pocket pocket{object.id, n, any_pose(dice, width, height), false, {}, {}};
    while (dice.toss(0.3))
        pocket.notches.push_back(notch(shape::Capsule{28, 25}, any_pose(dice, 60, 60), dice.tenths(5, 40)));
    return pocket;
}

/// A crowded drawer with obstructions: some of everything is wrong with it.
inline Scene any_scene(std::uint64_t seed, int pockets) {
    Dice dice(seed);
    Scene scene;
    scene.drawer = drawer_of(shape::Rectangle{600, 400, dice.toss(0.5) ? 0 : dice.tenths(1, 20)});
    scene.drawer.clear_height_mm = 75;
    scene.drawer.load_kg = 0.3 * pockets;
    scene.drawer.gap_mm = 0.5;
    scene.drawer.obstructions = {{shape::Rectangle{60, 40, 0}, {{570, 380}, 0}, {}},
                                 {shape::Circle{50}, {{150, 200}, 0}, {}}};
    for (int i = 0; i < pockets; ++i) {
        scene.objects.push_back(any_object(dice, i));
        scene.drawer.pockets.push_back(any_pocket(dice, scene.objects.back(), 1, 600, 400));
    }
    return scene;
}

} // namespace drawercast::layout::testing
