// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/walls.h"

#include "mold/plate_element.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::mold {

double held_plate_lift(double ratio) {
    constexpr double pi = std::numbers::pi;
    double sum = 0;
    for (int m = 1; m < 40; m += 2) {
        const double a = m * pi * ratio / 2;
        const double sign = m / 2 % 2 == 0 ? 1 : -1;
        // cosh overflows where the term in it has long vanished
        const double edges = a > 300 ? 0 : (a * std::tanh(a) + 2) / (2 * std::cosh(a));
        sum += sign * (1 - edges) / std::pow(m, 5);
    }
    return 4 * sum / std::pow(pi, 5);
}

double held_plate_moment(double ratio, double poisson) {
    constexpr double pi = std::numbers::pi;
    double sum = 0;
    for (int m = 1; m < 400; m += 2) { // falls with m³ alone
        const double a = m * pi * ratio / 2;
        const double sign = m / 2 % 2 == 0 ? 1 : -1;
        const double fifth = std::pow(pi * m, 5);
        const bool far = a > 300; // cosh overflows where the terms in it have long vanished
        const double even = far ? 0 : -2 * (a * std::tanh(a) + 2) / (fifth * std::cosh(a));
        const double odd = far ? 0 : 2 / (fifth * std::cosh(a));
        sum += sign * std::pow(m * pi, 2) * (4 / fifth + even - poisson * (even + 2 * odd));
    }
    return sum;
}

WallAnswer held_plate(double length, double width, const job::Board& board, const PlateLoad& load) {
    const PlateSection section{board.thickness_mm, board.elasticity_mpa, board.poisson};
    const double low = std::min(length, width);
    const double ratio = std::max(length, width) / low;
    WallAnswer out;
    out.length_mm = length;
    out.bow_mm = held_plate_lift(ratio) * load.closed_kpa / 1000 * std::pow(low, 4) / section.bending_nmm();
    out.stress_mpa = 6 * held_plate_moment(ratio, board.poisson) * load.build_for_kpa / 1000 *
                     std::pow(low / board.thickness_mm, 2);
    return out;
}

std::vector<WallAnswer> walls_of(const WallsIn& in) {
    const WallAnswer across = held_plate(in.width_mm, in.height_mm, in.board, in.load);
    const WallAnswer deep = held_plate(in.depth_mm, in.height_mm, in.board, in.load);
    return {across, deep, across, deep};
}

WallAnswer worst_wall(const std::vector<WallAnswer>& walls) {
    WallAnswer worst;
    for (const WallAnswer& wall : walls) {
        worst.bow_mm = std::max(worst.bow_mm, wall.bow_mm);
        worst.stress_mpa = std::max(worst.stress_mpa, wall.stress_mpa);
    }
    return worst;
}

} // namespace drawercast::mold
