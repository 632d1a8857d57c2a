// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_element.h"

#include <cmath>

namespace drawercast::mold {

double PlateSection::bending_nmm() const {
    return elasticity_mpa * thickness_mm * thickness_mm * thickness_mm / (12 * (1 - poisson * poisson));
}

double PlateSection::shear_n_mm() const {
    return 5.0 / 6 * elasticity_mpa / (2 * (1 + poisson)) * thickness_mm;
}

namespace {

constexpr int lift = 0;
constexpr int slope_x = 1;
constexpr int slope_y = 2;
constexpr int at(int node, int unknown) { return node_unknowns * node + unknown; }

/// Strains that give one term of the energy each: rows of the strain matrix.
void add_energy(ElementMatrix& k, const ElementVector& row, const ElementVector& other, double weight) {
    for (std::size_t i = 0; i < row.size(); ++i)
        for (std::size_t j = 0; j < other.size(); ++j) k[i][j] += weight * row[i] * other[j];
}

struct Curvatures {
    ElementVector x{}, y{}, xy{};
};

/// Curvatures from the unknowns at (u, v), each from 0 to 1.
Curvatures curvatures_at(double u, double v, double a, double b) {
    Curvatures c;
    const std::array<double, 4> dx{-(1 - v) / a, (1 - v) / a, -v / a, v / a};
    const std::array<double, 4> dy{-(1 - u) / b, -u / b, (1 - u) / b, u / b};
    for (int node = 0; node < 4; ++node) {
        const auto n = static_cast<std::size_t>(node);
        c.x[static_cast<std::size_t>(at(node, slope_x))] = dx[n];
        c.y[static_cast<std::size_t>(at(node, slope_y))] = dy[n];
        c.xy[static_cast<std::size_t>(at(node, slope_x))] = dy[n];
        c.xy[static_cast<std::size_t>(at(node, slope_y))] = dx[n];
    }
    return c;
}

/// Shear strain of one side, at its middle: ∂w/∂s − β there.
ElementVector side_shear(int from, int to, int slope, double length) {
    ElementVector row{};
    row[static_cast<std::size_t>(at(from, lift))] = -1 / length;
    row[static_cast<std::size_t>(at(to, lift))] = 1 / length;
    row[static_cast<std::size_t>(at(from, slope))] = -0.5;
    row[static_cast<std::size_t>(at(to, slope))] = -0.5;
    return row;
}

/// Shear varies linearly between two opposite sides: ∫ over [0, 1] of (1 − v)², v(1 − v), v².
void add_shear(ElementMatrix& k, const ElementVector& one, const ElementVector& other, double weight) {
    add_energy(k, one, one, weight / 3);
    add_energy(k, one, other, weight / 6);
    add_energy(k, other, one, weight / 6);
    add_energy(k, other, other, weight / 3);
}

} // namespace

ElementMatrix element_stiffness(const PlateSection& section, double a_mm, double b_mm) {
    ElementMatrix k{};
    const double bending = section.bending_nmm();
    const double nu = section.poisson;
    const double area = a_mm * b_mm;
    const double gauss = 0.5 / std::sqrt(3.0);
    for (const double u : {0.5 - gauss, 0.5 + gauss}) {
        for (const double v : {0.5 - gauss, 0.5 + gauss}) {
            const Curvatures c = curvatures_at(u, v, a_mm, b_mm);
            const double weight = bending * area / 4;
            add_energy(k, c.x, c.x, weight);
            add_energy(k, c.y, c.y, weight);
            add_energy(k, c.x, c.y, weight * nu);
            add_energy(k, c.y, c.x, weight * nu);
            add_energy(k, c.xy, c.xy, weight * (1 - nu) / 2);
        }
    }
    const double shear = section.shear_n_mm() * area;
    add_shear(k, side_shear(0, 1, slope_x, a_mm), side_shear(2, 3, slope_x, a_mm), shear);
    add_shear(k, side_shear(0, 2, slope_y, b_mm), side_shear(1, 3, slope_y, b_mm), shear);
    return k;
}

Moments middle_moments(const PlateSection& section, double a_mm, double b_mm, const ElementVector& unknowns) {
    const Curvatures c = curvatures_at(0.5, 0.5, a_mm, b_mm);
    double x = 0;
    double y = 0;
    double xy = 0;
    for (std::size_t i = 0; i < unknowns.size(); ++i) {
        x += c.x[i] * unknowns[i];
        y += c.y[i] * unknowns[i];
        xy += c.xy[i] * unknowns[i];
    }
    const double bending = section.bending_nmm();
    const double nu = section.poisson;
    return {bending * (x + nu * y), bending * (y + nu * x), bending * (1 - nu) / 2 * xy};
}

double face_stress_mpa(const Moments& m, double thickness_mm) {
    const double mean = (m.x + m.y) / 2;
    const double radius = std::hypot((m.x - m.y) / 2, m.xy);
    return 6 * (std::abs(mean) + radius) / (thickness_mm * thickness_mm);
}

} // namespace drawercast::mold
