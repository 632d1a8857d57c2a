// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/fillet.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace drawercast::casting {
namespace {

constexpr double pi = std::numbers::pi;

/// Σ convex turns − Σ over reflex corners of 2·tan(turn/2).
double turning(const shape::Contour& outline) {
    if (shape::convex(outline)) return 2 * pi;
    double sum = 0;
    for (std::size_t i = 0; i < outline.core.size(); ++i) {
        const double turn = shape::turn_at(outline.core, i);
        sum += turn > 0 ? turn : 2 * std::tan(turn / 2);
    }
    return sum;
}

} // namespace

double clay_reach(double radius_mm, double height_mm) {
    if (height_mm >= radius_mm) return 0;
    const double z = std::max(0.0, height_mm);
    return radius_mm - std::sqrt((2 * radius_mm - z) * z);
}

double clay_height(double radius_mm, double reach_mm) { return clay_reach(radius_mm, reach_mm); }

double fillet_alone(const shape::Contour& outline, double radius_mm) {
    const double area = radius_mm * radius_mm * (1 - pi / 4);
    const double centroid = radius_mm * (10 - 3 * pi) / (3 * (4 - pi));
    return area * (shape::perimeter(outline) + centroid * turning(outline));
}

std::vector<ClayNode> clay_nodes(double radius_mm, int count) {
    std::vector<ClayNode> nodes;
    for (const Node& node : gauss_nodes(count, 0, pi / 2)) {
        const double per_phi = radius_mm * std::cos(node.at);
        nodes.push_back({node.at, radius_mm * (1 - std::sin(node.at)), node.weight * per_phi, per_phi});
    }
    return nodes;
}

} // namespace drawercast::casting
