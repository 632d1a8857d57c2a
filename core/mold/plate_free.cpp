// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_free.h"

#include "base/demand.h"

#include <algorithm>
#include <cmath>

namespace drawercast::mold {

namespace {

constexpr std::size_t symmetries = 4;
constexpr bool odd_x(std::size_t symmetry) { return symmetry % 2 == 1; }
constexpr bool odd_y(std::size_t symmetry) { return symmetry / 2 == 1; }

/// What a value at the quarter's node counts at its mirror image.
constexpr double sign(std::size_t symmetry, bool right, bool back) {
    return ((odd_x(symmetry) && right) ? -1.0 : 1.0) * ((odd_y(symmetry) && back) ? -1.0 : 1.0);
}

std::vector<double> first_half(const std::vector<double>& lines) {
    DRAWERCAST_DEMAND(lines.size() % 2 == 1, "a line through the middle");
    const std::size_t middle = lines.size() / 2;
    for (std::size_t i = 0; i < middle; ++i) {
        const double other = lines.front() + lines.back() - lines[lines.size() - 1 - i];
        DRAWERCAST_DEMAND(std::abs(lines[i] - other) < 1e-9, "lines that mirror each other");
    }
    return {lines.begin(), lines.begin() + static_cast<std::ptrdiff_t>(middle) + 1};
}

/// On a line of symmetry an even plate keeps its slope across at zero, an odd one its lift and slope along.
Holding middle_lines(const PlateGrid& quarter, std::size_t symmetry) {
    Holding holding{std::vector<bool>(node_unknowns * quarter.nodes()), std::vector<double>(quarter.nodes())};
    for (std::size_t row = 0; row < quarter.rows(); ++row) {
        const std::size_t node = node_unknowns * quarter.node(quarter.columns() - 1, row);
        if (!odd_x(symmetry)) {
            holding.fixed[node + 1] = true;
        } else {
            holding.fixed[node] = holding.fixed[node + 2] = true;
        }
    }
    for (std::size_t column = 0; column < quarter.columns(); ++column) {
        const std::size_t node = node_unknowns * quarter.node(column, quarter.rows() - 1);
        if (!odd_y(symmetry)) {
            holding.fixed[node + 2] = true;
        } else {
            holding.fixed[node] = holding.fixed[node + 1] = true;
        }
    }
    return holding;
}

} // namespace

FreePlate::Image FreePlate::image_of(std::size_t node) const {
    const std::size_t column = node % grid_.columns();
    const std::size_t row = node / grid_.columns();
    const bool right = column >= quarter_.columns();
    const bool back = row >= quarter_.rows();
    return {quarter_.node(right ? grid_.columns() - 1 - column : column, back ? grid_.rows() - 1 - row : row),
            right, back};
}

FreePlate::FreePlate(const PlateSection& section, const PlateGrid& grid,
                     const std::vector<std::size_t>& nodes)
    : section_(section), grid_(grid), quarter_{first_half(grid.x_mm), first_half(grid.y_mm)},
      point_of_node_(grid.nodes(), no_point) {
    std::vector<std::size_t> quarter_nodes;
    const std::size_t base = quarter_.node(std::min<std::size_t>(2, quarter_.columns() - 2),
                                           std::min<std::size_t>(2, quarter_.rows() - 2));
    quarter_nodes.push_back(base);
    for (const std::size_t node : nodes) quarter_nodes.push_back(image_of(node).quarter_node);
    std::sort(quarter_nodes.begin(), quarter_nodes.end());
    quarter_nodes.erase(std::unique(quarter_nodes.begin(), quarter_nodes.end()), quarter_nodes.end());

    std::size_t bases = 0;
    for (std::size_t node = 0; node < grid_.nodes(); ++node) {
        const Image image = image_of(node);
        const auto at = std::lower_bound(quarter_nodes.begin(), quarter_nodes.end(), image.quarter_node);
        if (at == quarter_nodes.end() || *at != image.quarter_node) continue;
        point_of_node_[node] = points_.size();
        if (image.quarter_node == base) base_points_[bases++] = points_.size();
        points_.push_back(
            {node, static_cast<std::size_t>(at - quarter_nodes.begin()), image.right, image.back});
    }
    DRAWERCAST_DEMAND(bases == 4, "four springs that hold the plate");

    for (std::size_t symmetry = 0; symmetry < symmetries; ++symmetry) {
        Holding holding = middle_lines(quarter_, symmetry);
        holding.spring_n_mm[base] = base_spring_n_mm;
        systems_.emplace_back(section_, quarter_, holding);
        by_force_.push_back(systems_.back().lift_by_force(quarter_nodes));
    }
}

double FreePlate::lift_by_force(std::size_t a, std::size_t b) const {
    const Point& p = points_[a];
    const Point& q = points_[b];
    double sum = 0;
    for (std::size_t symmetry = 0; symmetry < symmetries; ++symmetry)
        sum += sign(symmetry, p.right, p.back) * sign(symmetry, q.right, q.back) *
               by_force_[symmetry].at(p.quarter, q.quarter);
    return sum / symmetries;
}

std::vector<double> FreePlate::lifts(const std::vector<double>& forces_n) const {
    std::vector<double> out(points_.size());
    for (std::size_t symmetry = 0; symmetry < symmetries; ++symmetry) {
        const Square& by_force = by_force_[symmetry];
        std::vector<double> force(by_force.size);
        for (std::size_t i = 0; i < points_.size(); ++i)
            force[points_[i].quarter] += sign(symmetry, points_[i].right, points_[i].back) * forces_n[i] / 4;
        std::vector<double> lift(by_force.size);
        for (std::size_t q = 0; q < by_force.size; ++q) { // symmetric: rows serve as columns
            if (force[q] == 0) continue;
            const double* row = &by_force.values[q * by_force.size];
            for (std::size_t p = 0; p < by_force.size; ++p) lift[p] += force[q] * row[p];
        }
        for (std::size_t i = 0; i < points_.size(); ++i)
            out[i] += sign(symmetry, points_[i].right, points_[i].back) * lift[points_[i].quarter];
    }
    return out;
}

std::vector<double> FreePlate::unknowns(const std::vector<double>& nodal_forces_n) const {
    std::vector<double> out(node_unknowns * grid_.nodes());
    for (std::size_t symmetry = 0; symmetry < symmetries; ++symmetry) {
        std::vector<double> load(node_unknowns * quarter_.nodes());
        for (std::size_t node = 0; node < grid_.nodes(); ++node) {
            const Image image = image_of(node);
            load[node_unknowns * image.quarter_node] +=
                sign(symmetry, image.right, image.back) * nodal_forces_n[node] / 4;
        }
        const auto quarter = systems_[symmetry].solve(load);
        for (std::size_t node = 0; node < grid_.nodes(); ++node) {
            const Image image = image_of(node);
            const double s = sign(symmetry, image.right, image.back);
            const double* from = &quarter[node_unknowns * image.quarter_node];
            double* to = &out[node_unknowns * node];
            to[0] += s * from[0];
            to[1] += (image.right ? -s : s) * from[1]; // slopes turn round in a mirror
            to[2] += (image.back ? -s : s) * from[2];
        }
    }
    return out;
}

} // namespace drawercast::mold
