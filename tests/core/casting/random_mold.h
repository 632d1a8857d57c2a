// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/casting/builders.h"

#include <random>
#include <string>
#include <utility>

namespace drawercast::casting::built {

/// Seeded pockets of every kind, thrown into a drawer so that many meet, overlap or stick out.
class RandomMold {
  public:
    explicit RandomMold(unsigned seed) : random_(seed) {}

    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    double real(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random_);
    }

    std::shared_ptr<const PocketForm> next_form() {
        const double depth = real(8, 35);
        switch (whole(0, 7)) {
        case 0:
            return form({cut(shape::Circle{real(6, 30)}, depth)});
        case 1:
            return form({cut(shape::Capsule{real(24, 40), real(8, 20)}, depth)});
        case 2:
            return form({cut(shape::Rectangle{real(14, 40), real(14, 30), 4}, depth)});
        case 3:
            return form({lying(-real(8, 20), real(8, 20), real(8, 20), real(-3, 6))});
        case 4:
            return form(
                {cut(shape::Rectangle{30, 18, 0}, depth), notch(shape::Capsule{26, 12}, 6, {{0, 8}, 90})});
        case 5:
            return form(
                {cut(shape::Rectangle{30, 20, 2}, depth / 2), cut(shape::Circle{14}, depth, {{5, 0}, 0})});
        case 6:
            return form({cut(star(), depth)});
        default:
            return form({cut(shape::Rectangle{real(10, 40), real(10, 30), 0}, whole(0, 5) ? depth : 2)});
        }
    }

    CavityPocket next_pocket() {
        const shape::Pose pose{{real(0, 150), real(0, 120)}, whole(0, 1) ? real(0, 360) : 90.0 * whole(0, 3)};
        return {pocket("p#" + std::to_string(++count_), next_form(), pose), {}};
    }

    CavityIn next(int pockets) {
        CavityIn in;
        in.insert = insert(150, 120, 40);
        in.fillet_mm = real(2, 7);
        in.enlargement = whole(0, 1) ? 1 : 1 / (1 - 0.01);
        for (int i = 0; i < pockets; ++i) in.pockets.push_back(next_pocket());
        return in;
    }

  private:
    shape::Polygon star() {
        shape::Polygon out;
        for (int i = 0; i < 12; ++i) {
            const double radius = real(8, 20);
            out.corners.push_back(
                {{radius * std::cos(i * 0.5235987756), radius * std::sin(i * 0.5235987756)}});
        }
        return out;
    }
    std::mt19937 random_;
    int count_ = 0;
};

} // namespace drawercast::casting::built
