// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mold/plate_system.h"

#include <array>
#include <cmath>
#include <cstddef>
#include <vector>

/// A quarter of a rectangular plate under even pressure, its corner at the origin and the plate's middle at
/// the far end of both axes; x is the longer side.
namespace drawercast::mold {

inline constexpr double quarter_pressure = 0.01; // N/mm²
inline constexpr double quarter_side = 400;      // mm, the whole plate's shorter side
inline constexpr double thin = 0.4;              // mm: its shear can't be seen

enum class Edge {
    held,    ///< neither lifts nor slopes along its edges
    resting, ///< does not lift
    clamped,
    corners, ///< only the corners do not lift
    grid,    ///< a bolt at each corner, and the next panel just alike behind each edge
};

struct QuarterPlate {
    PlateSection section;
    PlateGrid grid;
    std::vector<double> loads;
    std::vector<double> unknowns;

    std::size_t last_column() const { return grid.columns() - 1; }
    std::size_t last_row() const { return grid.rows() - 1; }
    double long_mm() const { return 2 * grid.x_mm.back(); }

    /// w·D/(q·side⁴) of a node.
    double lift(std::size_t column, std::size_t row, double side = quarter_side) const {
        return unknowns[node_unknowns * grid.node(column, row)] * section.bending_nmm() /
               (quarter_pressure * std::pow(side, 4));
    }
    double middle(double side = quarter_side) const { return lift(last_column(), last_row(), side); }

    /// M/(q·side²) at the middle of an element; sagging under a load from above is positive.
    Moments moments(std::size_t column, std::size_t row, double side = quarter_side) const {
        const auto nodes = nodes_of(column, row);
        ElementVector u{};
        for (std::size_t i = 0; i < u.size(); ++i)
            u[i] = unknowns[node_unknowns * nodes[i / node_unknowns] + i % node_unknowns];
        const Moments m = middle_moments(section, width(column), height(row), u);
        const double scale = -quarter_pressure * side * side; // the pressure lifts
        return {m.x / scale, m.y / scale, m.xy / scale};
    }
    Moments middle_moments_of(double side = quarter_side) const {
        return moments(last_column() - 1, last_row() - 1, side); // those of its mirror images, too
    }

    /// What holds each node down, N.
    std::vector<double> reactions() const {
        std::vector<double> out(grid.nodes());
        for (std::size_t node = 0; node < out.size(); ++node) out[node] = loads[node_unknowns * node];
        for (std::size_t row = 0; row < last_row(); ++row) {
            for (std::size_t column = 0; column < last_column(); ++column) {
                const auto k = element_stiffness(section, width(column), height(row));
                const auto nodes = nodes_of(column, row);
                for (std::size_t i = 0; i < k.size(); i += node_unknowns)
                    for (std::size_t j = 0; j < k.size(); ++j)
                        out[nodes[i / node_unknowns]] -=
                            k[i][j] * unknowns[node_unknowns * nodes[j / node_unknowns] + j % node_unknowns];
            }
        }
        return out;
    }

  private:
    double width(std::size_t column) const { return grid.x_mm[column + 1] - grid.x_mm[column]; }
    double height(std::size_t row) const { return grid.y_mm[row + 1] - grid.y_mm[row]; }
    std::array<std::size_t, 4> nodes_of(std::size_t column, std::size_t row) const {
        return {grid.node(column, row), grid.node(column + 1, row), grid.node(column, row + 1),
                grid.node(column + 1, row + 1)};
    }
};

/// `parts`: elements along half of the shorter side. `ratio`: longer over shorter side.
inline QuarterPlate quarter_plate(double ratio, Edge edge, std::size_t parts, double thickness = thin,
                                  double poisson = 0.3) {
    const auto even = [](double length, std::size_t count) {
        std::vector<double> lines;
        for (std::size_t i = 0; i <= count; ++i)
            lines.push_back(length * static_cast<double>(i) / static_cast<double>(count));
        return lines;
    };
    const auto parts_x = static_cast<std::size_t>(std::lround(ratio * static_cast<double>(parts)));
    QuarterPlate plate{{thickness, 2000, poisson},
                       {even(quarter_side / 2 * ratio, parts_x), even(quarter_side / 2, parts)},
                       {},
                       {}};
    const PlateGrid& grid = plate.grid;
    Holding holding{std::vector<bool>(node_unknowns * grid.nodes()), std::vector<double>(grid.nodes())};
    plate.loads.assign(node_unknowns * grid.nodes(), 0);
    for (std::size_t row = 0; row < grid.rows(); ++row) {
        for (std::size_t column = 0; column < grid.columns(); ++column) {
            const bool end_x = column == 0;
            const bool end_y = row == 0;
            const bool middle_x = column == plate.last_column();
            const bool middle_y = row == plate.last_row();
            const std::size_t node = node_unknowns * grid.node(column, row);
            plate.loads[node] = quarter_pressure * grid.x_mm[1] * grid.y_mm[1] *
                                (end_x || middle_x ? 0.5 : 1) * (end_y || middle_y ? 0.5 : 1);
            const bool point = edge == Edge::corners || edge == Edge::grid;
            holding.fixed[node] = point ? end_x && end_y : end_x || end_y;
            const bool across = edge == Edge::clamped || edge == Edge::grid;
            const bool along = edge == Edge::clamped || edge == Edge::held;
            holding.fixed[node + 1] = middle_x || (end_x && across) || (end_y && along);
            holding.fixed[node + 2] = middle_y || (end_y && across) || (end_x && along);
        }
    }
    plate.unknowns = PlateSystem(plate.section, grid, holding).solve(plate.loads);
    return plate;
}

/// What two meshes, one twice as fine, say of an endlessly fine one: the error falls with the square.
template <class Value>
double extrapolated(double ratio, Edge edge, double poisson, Value value) {
    const double coarse = value(quarter_plate(ratio, edge, 8, thin, poisson));
    const double fine = value(quarter_plate(ratio, edge, 16, thin, poisson));
    return fine + (fine - coarse) / 3;
}

} // namespace drawercast::mold
