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

namespace {

constexpr double furthest_apart_mm = 150;
constexpr double from_end_mm = 30;

int screws_for(double load_n, double capacity_n, int least) {
    if (capacity_n <= 0) return least;
    return std::max(least, static_cast<int>(std::ceil(load_n * capacity_factor / capacity_n)));
}

WallAnswer wall_of(const WallsIn& in, double length) {
    const PlateSection section{in.board.thickness_mm, in.board.elasticity_mpa, in.board.poisson};
    const double low = std::min(length, in.height_mm);
    const double ratio = std::max(length, in.height_mm) / low;
    const double half_n = in.load.build_for_kpa / 1000 * in.height_mm * length / 2;
    const double lift_n = in.lift_n * length / (2 * (in.width_mm + in.depth_mm));
    const double between = std::max(0.0, length - 2 * from_end_mm);
    WallAnswer out;
    out.length_mm = length;
    out.bow_mm =
        held_plate_lift(ratio) * in.load.closed_kpa / 1000 * std::pow(low, 4) / section.bending_nmm();
    out.foot_screws = screws_for(std::max(half_n, lift_n), in.screw_capacity_n,
                                 1 + static_cast<int>(std::ceil(between / furthest_apart_mm)));
    out.end_screws = screws_for(half_n, in.screw_capacity_n, 2);
    return out;
}

} // namespace

std::vector<WallAnswer> walls_of(const WallsIn& in) {
    const WallAnswer across = wall_of(in, in.width_mm);
    const WallAnswer deep = wall_of(in, in.depth_mm);
    return {across, deep, across, deep};
}

} // namespace drawercast::mold
