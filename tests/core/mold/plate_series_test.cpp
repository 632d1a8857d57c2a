// SPDX-License-Identifier: GPL-3.0-or-later
#include "mold/plate_system.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>
#include <vector>

/// Whole plates under even pressure against the series of thin-plate theory and against the printed tables.
namespace drawercast::mold {
namespace {

constexpr double pressure = 0.01; // N/mm²
constexpr double side = 400;      // mm, the shorter one

enum class Edge { held, clamped, corners };

std::vector<double> even_lines(double length, std::size_t parts) {
    std::vector<double> lines;
    for (std::size_t i = 0; i <= parts; ++i)
        lines.push_back(length * static_cast<double>(i) / static_cast<double>(parts));
    return lines;
}

struct Plate {
    PlateSection section;
    PlateGrid grid;
    std::vector<double> unknowns;

    double width() const { return grid.x_mm.back(); }
    double lift(std::size_t column, std::size_t row) const {
        return unknowns[node_unknowns * grid.node(column, row)];
    }
    double middle() const { return lift(grid.columns() / 2, grid.rows() / 2); }
    double dimensionless_lift() const {
        return middle() * section.bending_nmm() / (pressure * std::pow(side, 4));
    }
    /// Moments at the middle of the plate: mean of the four elements there.
    Moments moments() const {
        Moments sum;
        for (std::size_t dx = 0; dx < 2; ++dx)
            for (std::size_t dy = 0; dy < 2; ++dy) {
                const auto m = of_element(grid.columns() / 2 - dx, grid.rows() / 2 - dy);
                sum.x -= m.x / 4, sum.y -= m.y / 4, sum.xy -= m.xy / 4; // pressure lifts: sagging is negative
            }
        return sum;
    }
    Moments of_element(std::size_t column, std::size_t row) const {
        ElementVector u{};
        const std::array nodes{grid.node(column, row), grid.node(column + 1, row), grid.node(column, row + 1),
                               grid.node(column + 1, row + 1)};
        for (std::size_t i = 0; i < u.size(); ++i)
            u[i] = unknowns[node_unknowns * nodes[i / node_unknowns] + i % node_unknowns];
        return middle_moments(section, grid.x_mm[column + 1] - grid.x_mm[column],
                              grid.y_mm[row + 1] - grid.y_mm[row], u);
    }
};

/// x is the longer side.
Plate solved(double ratio, Edge edge, std::size_t parts, double thickness, double poisson = 0.3) {
    const auto parts_x = 2 * static_cast<std::size_t>(std::lround(ratio * static_cast<double>(parts) / 2));
    Plate plate{{thickness, 2000, poisson}, {even_lines(side * ratio, parts_x), even_lines(side, parts)}, {}};
    const PlateGrid& grid = plate.grid;
    Holding holding{std::vector<bool>(node_unknowns * grid.nodes()), std::vector<double>(grid.nodes())};
    std::vector<double> loads(node_unknowns * grid.nodes());
    const double cell = grid.x_mm[1] * grid.y_mm[1];
    for (std::size_t row = 0; row < grid.rows(); ++row) {
        for (std::size_t column = 0; column < grid.columns(); ++column) {
            const bool end_x = column == 0 || column + 1 == grid.columns();
            const bool end_y = row == 0 || row + 1 == grid.rows();
            const std::size_t node = node_unknowns * grid.node(column, row);
            loads[node] = pressure * cell * (end_x ? 0.5 : 1) * (end_y ? 0.5 : 1);
            if (edge == Edge::corners) {
                holding.fixed[node] = end_x && end_y;
                continue;
            }
            holding.fixed[node] = end_x || end_y;
            const bool clamped = edge == Edge::clamped;
            holding.fixed[node + 1] = clamped ? end_x || end_y : end_y; // no slope along a held edge
            holding.fixed[node + 2] = clamped ? end_x || end_y : end_x;
        }
    }
    plate.unknowns = PlateSystem(plate.section, grid, holding).solve(loads);
    return plate;
}

/// Navier's double series for held edges with Mindlin's shear, w·D/(q·b⁴) at the middle. Source: Timoshenko
/// and Woinowsky-Krieger, Theory of Plates and Shells, §28; the shear term follows from the same sines.
double navier_lift(double ratio, const PlateSection& section) {
    constexpr double pi = std::numbers::pi;
    double sum = 0;
    for (int m = 1; m < 400; m += 2) {
        for (int n = 1; n < 400; n += 2) {
            const double wave = pi * pi * (m * m / (ratio * ratio) + n * n) / (side * side);
            const double q = 16 / (pi * pi * m * n) * ((m + n) / 2 % 2 == 1 ? 1 : -1);
            sum += q * (1 / (wave * wave) + section.bending_nmm() / (section.shear_n_mm() * wave));
        }
    }
    return sum / std::pow(side, 4);
}

struct Row {
    double ratio, lift, short_way, long_way;
};

/// What two meshes, one twice as fine, say of an endless fine one: the error falls with the square.
double extrapolated(double coarse, double fine) { return fine + (fine - coarse) / 3; }

Row dimensionless(double ratio, Edge edge, double thickness) {
    std::array<Row, 2> rows;
    for (std::size_t i = 0; i < 2; ++i) {
        const Plate plate = solved(ratio, edge, i == 0 ? 16 : 32, thickness);
        const double scale = pressure * side * side;
        rows[i] = {ratio, plate.dimensionless_lift(), plate.moments().y / scale, plate.moments().x / scale};
    }
    return {ratio, extrapolated(rows[0].lift, rows[1].lift),
            extrapolated(rows[0].short_way, rows[1].short_way),
            extrapolated(rows[0].long_way, rows[1].long_way)};
}

TEST(PlateSeries, HeldEdgesThinAndThick) {
    for (const double thickness : {0.4, 40.0}) {
        for (const double ratio : {1.0, 1.5, 2.0}) {
            const double wanted = navier_lift(ratio, {thickness, 2000, 0.3});
            const double found = dimensionless(ratio, Edge::held, thickness).lift;
            EXPECT_NEAR(found / wanted, 1, 3e-4) << thickness << " " << ratio;
        }
    }
}

TEST(PlateSeries, HeldEdgesAgainstTheTable) {
    // Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, table 8 (from memory), poisson 0.3.
    for (const Row& row : {Row{1.0, .00406, .0479, .0479}, Row{1.2, .00564, .0627, .0501},
                           Row{1.5, .00772, .0812, .0498}, Row{2.0, .01013, .1017, .0464}}) {
        const Row found = dimensionless(row.ratio, Edge::held, 0.4);
        EXPECT_NEAR(found.lift / row.lift, 1, 6e-3) << row.ratio;
        EXPECT_NEAR(found.short_way / row.short_way, 1, 6e-3) << row.ratio;
        EXPECT_NEAR(found.long_way / row.long_way, 1, 6e-3) << row.ratio;
    }
}

TEST(PlateSeries, ClampedEdges) {
    // By Ritz with 10 to 12 polynomials for each axis: five digits of the lift, four of moments; poisson 0.3.
    for (const Row& row : {Row{1.0, .001265, .02291, .02291}, Row{1.5, .002197, .03677, .02027},
                           Row{2.0, .002533, .04115, .01581}}) {
        const Row found = dimensionless(row.ratio, Edge::clamped, 0.4);
        EXPECT_NEAR(found.lift / row.lift, 1, 1e-3) << row.ratio;
        EXPECT_NEAR(found.short_way / row.short_way, 1, 2e-3) << row.ratio;
        EXPECT_NEAR(found.long_way / row.long_way, 1, 2e-3) << row.ratio;
    }
}

TEST(PlateSeries, OnFourCorners) {
    struct Corner {
        double poisson, ratio, lift, middle_of_side;
    };
    // By Ritz with 10 × 10 polynomials, w·D/(q·a⁴) with a the shorter side.
    for (const Corner& row :
         {Corner{0.0, 1, .02820, .01743}, Corner{0.25, 1, .02567, .01746}, Corner{0.3, 1, .02551, .01775},
          Corner{0.3, 1.5, .07982, .08007}, Corner{0.3, 2, .23116, .24184}}) {
        const Plate plate = solved(row.ratio, Edge::corners, 32, 0.4, row.poisson);
        const double scale = plate.section.bending_nmm() / (pressure * std::pow(side, 4));
        EXPECT_NEAR(plate.middle() * scale / row.lift, 1, 3e-3) << row.poisson << " " << row.ratio;
        const double at_side = plate.lift(plate.grid.columns() / 2, 0) * scale;
        EXPECT_NEAR(at_side / row.middle_of_side, 1, 3e-3) << row.poisson << " " << row.ratio;
    }
}

TEST(PlateSeries, ErrorFallsWithTheSquareOfTheMesh) {
    std::vector<double> errors;
    for (const std::size_t parts : {8u, 16u, 32u}) {
        const Plate plate = solved(1.5, Edge::held, parts, 16);
        errors.push_back(std::abs(plate.dimensionless_lift() / navier_lift(1.5, plate.section) - 1));
    }
    EXPECT_GT(errors[0] / errors[1], 3.5);
    EXPECT_GT(errors[1] / errors[2], 3.5);
    EXPECT_LT(errors[2], 2.5e-3);
}

} // namespace
} // namespace drawercast::mold
