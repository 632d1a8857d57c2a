// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/mold/quarter_plate.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <numeric>
#include <vector>

/// Plates held or clamped along their edges against the series of thin-plate theory, within 0.1 % in lift,
/// and against printed tables, within 0.6 %. Where a table's ratio of sides is not given: 1 to 2.
namespace drawercast::mold {
namespace {

constexpr double to_series = 1e-3;
constexpr double to_print = 6e-3;
constexpr double moments_to_series = 2e-3; // they are given to four digits

/// Navier's double series for held edges with Mindlin's shear, w·D/(q·b⁴) at the middle. Source: Timoshenko
/// and Woinowsky-Krieger, Theory of Plates and Shells, §28; the shear term follows from the same sines.
double navier_lift(double ratio, const PlateSection& section) {
    constexpr double pi = std::numbers::pi;
    double sum = 0;
    for (int m = 1; m < 400; m += 2) {
        for (int n = 1; n < 400; n += 2) {
            const double wave = pi * pi * (m * m / (ratio * ratio) + n * n) / (quarter_side * quarter_side);
            const double q = 16 / (pi * pi * m * n) * ((m + n) / 2 % 2 == 1 ? 1 : -1);
            sum += q * (1 / (wave * wave) + section.bending_nmm() / (section.shear_n_mm() * wave));
        }
    }
    return sum / std::pow(quarter_side, 4);
}

/// Of the plate's middle, by two meshes.
struct Middle {
    double lift, short_way, long_way;
};

Middle middle_of(double ratio, Edge edge) {
    std::vector<Middle> found;
    for (const std::size_t parts : {8u, 16u}) {
        const QuarterPlate plate = quarter_plate(ratio, edge, parts);
        const Moments m = plate.middle_moments_of();
        found.push_back({plate.middle(), m.y, m.x});
    }
    const auto fine = [&](auto member) { return (4 * found[1].*member - found[0].*member) / 3; };
    return {fine(&Middle::lift), fine(&Middle::short_way), fine(&Middle::long_way)};
}

TEST(PlateSeries, HeldEdgesThinAndThick) {
    for (const double thickness : {thin, 40.0}) {
        for (const double ratio : {1.0, 1.5, 2.0}) {
            const auto lift = [&](std::size_t parts) {
                return quarter_plate(ratio, Edge::held, parts, thickness).middle();
            };
            const double coarse = lift(8), fine = lift(16);
            const double wanted = navier_lift(ratio, {thickness, 2000, 0.3});
            EXPECT_NEAR((fine + (fine - coarse) / 3) / wanted, 1, 3e-4) << thickness << " " << ratio;
        }
    }
}

struct HeldRow {
    double ratio;
    Middle exact, printed;
};
// Exact: Lévy's series, 99 terms. Printed: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells,
// table 8 (from memory). Poisson 0.3.
constexpr HeldRow held_rows[]{
    {1.0, {.004062, .04789, .04789}, {.00406, .0479, .0479}},
    {1.5, {.007724, .08116, .04984}, {.00772, .0812, .0498}},
    {2.0, {.010129, .10168, .04635}, {.01013, .1017, .0464}},
    {3.0, {.012233, .11886, .04063}, {.01223, .1189, .0406}},
};

TEST(PlateSeries, HeldEdges) {
    for (const HeldRow& row : held_rows) {
        const Middle found = middle_of(row.ratio, Edge::held);
        EXPECT_NEAR(found.lift / row.exact.lift, 1, to_series) << row.ratio;
        EXPECT_NEAR(found.short_way / row.exact.short_way, 1, to_series) << row.ratio;
        EXPECT_NEAR(found.long_way / row.exact.long_way, 1, to_series) << row.ratio;
        EXPECT_NEAR(found.lift / row.printed.lift, 1, to_print) << row.ratio;
        EXPECT_NEAR(found.short_way / row.printed.short_way, 1, to_print) << row.ratio;
        EXPECT_NEAR(found.long_way / row.printed.long_way, 1, to_print) << row.ratio;
    }
}

// A plate that only rests pushes hardest at the middle of its longer sides, and its corners must be held
// down.
TEST(PlateSeries, WhatRestingEdgesBear) {
    struct Row {
        double ratio, hardest;
    };
    // Roark's Formulas for Stress and Strain, table 11.4, case 1a, γ.
    for (const Row& row : {Row{1.0, .420}, Row{1.6, .491}, Row{2.0, .503}}) {
        const QuarterPlate plate = quarter_plate(row.ratio, Edge::resting, 16);
        const auto bears = plate.reactions();
        const double all = quarter_pressure * quarter_side * plate.long_mm() / 4;
        EXPECT_NEAR(std::accumulate(bears.begin(), bears.end(), 0.0), all, 1e-6 * all);
        const double each = bears[plate.grid.node(plate.last_column(), 0)];
        const double hardest = each / (plate.grid.x_mm[1] / 2) / (quarter_pressure * quarter_side);
        EXPECT_NEAR(hardest / row.hardest, 1, to_print) << row.ratio;
    }
    const double corner = extrapolated(1, Edge::resting, 0.3, [](const QuarterPlate& plate) {
        return -plate.reactions()[0] / (quarter_pressure * quarter_side * quarter_side);
    });
    EXPECT_NEAR(corner / .0650, 1, 1e-2); // Lévy's series; a point of it is spread over the nodes beside it
}

TEST(PlateSeries, ClampedEdges) {
    struct Row {
        double ratio;
        Middle middle;
        double long_edge, short_edge;
    };
    // By Ritz with 10 to 12 polynomials for each axis: five digits of the lift, four of moments; poisson 0.3.
    for (const Row& row : {Row{1.0, {.001265, .02291, .02291}, .0513, .0513},
                           Row{1.5, {.002197, .03677, .02027}, .0757, .0570},
                           Row{2.0, {.002533, .04115, .01581}, .0829, .0570}}) {
        const Middle found = middle_of(row.ratio, Edge::clamped);
        EXPECT_NEAR(found.lift / row.middle.lift, 1, to_series) << row.ratio;
        EXPECT_NEAR(found.short_way / row.middle.short_way, 1, moments_to_series) << row.ratio;
        EXPECT_NEAR(found.long_way / row.middle.long_way, 1, moments_to_series) << row.ratio;
        // On the edge: straight on through the two elements next to it.
        const double long_edge = extrapolated(row.ratio, Edge::clamped, 0.3, [](const QuarterPlate& plate) {
            const std::size_t column = plate.last_column() - 1;
            return -1.5 * plate.moments(column, 0).y + 0.5 * plate.moments(column, 1).y;
        });
        EXPECT_NEAR(long_edge / row.long_edge, 1, to_print) << row.ratio;
        const double short_edge = extrapolated(row.ratio, Edge::clamped, 0.3, [](const QuarterPlate& plate) {
            const std::size_t at = plate.last_row() - 1;
            return -1.5 * plate.moments(0, at).x + 0.5 * plate.moments(1, at).x;
        });
        EXPECT_NEAR(short_edge / row.short_edge, 1, to_print) << row.ratio;
    }
}

TEST(PlateSeries, ErrorFallsWithTheSquareOfTheMesh) {
    std::vector<double> errors;
    for (const std::size_t parts : {4u, 8u, 16u}) {
        const QuarterPlate plate = quarter_plate(1.5, Edge::held, parts, 16);
        errors.push_back(std::abs(plate.middle() / navier_lift(1.5, plate.section) - 1));
    }
    EXPECT_GT(errors[0] / errors[1], 3.5);
    EXPECT_GT(errors[1] / errors[2], 3.5);
    EXPECT_LT(errors[2], 2.5e-3);
}

// By hand: a board of 18 mm (2000 MPa, Poisson 0.3) over 600 × 400 under 10 kPa, thin-plate theory. The board
// itself shears, so it lifts a little more.
TEST(PlateSeries, AWorkedBoard) {
    const QuarterPlate held = quarter_plate(1.5, Edge::held, 16, 18);
    const double lift = held.unknowns[node_unknowns * (held.grid.nodes() - 1)];
    EXPECT_GT(lift, 1.851);
    EXPECT_LT(lift, 1.851 * 1.02);
    const Moments m = held.middle_moments_of();
    const double scale = quarter_pressure * quarter_side * quarter_side;
    EXPECT_NEAR(face_stress_mpa({m.x * scale, m.y * scale, m.xy * scale}, 18) / 2.405, 1, to_print);
    const QuarterPlate corners = quarter_plate(1, Edge::corners, 16, 18);
    EXPECT_NEAR(corners.unknowns[node_unknowns * (corners.grid.nodes() - 1)] / 6.11, 1, 0.03);
    const QuarterPlate clamped = quarter_plate(1.5, Edge::clamped, 16, 18);
    EXPECT_NEAR(clamped.unknowns[node_unknowns * (clamped.grid.nodes() - 1)] / 0.527, 1, 0.05);
}

} // namespace
} // namespace drawercast::mold
