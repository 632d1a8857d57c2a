// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/mold/quarter_plate.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

/// Thin plates held at points: on their four corners, and by endless rows of bolts. Lifts within 0.1 % of the
/// series, moments within what its digits give.
namespace drawercast::mold {
namespace {

constexpr double to_series = 1e-3;

double digits(double value) { return 0.00006 / value + to_series; } ///< of a moment given to four places

TEST(PlatePoints, OnFourCorners) {
    struct Row {
        double poisson, ratio, lift, side_lift, short_way, long_way, side_moment;
    };
    // By Ritz with 10 × 10 polynomials, w·D/(q·a⁴) and M/(q·a²) with a the shorter side; the side is the
    // longer one. No printed table serves here: they differ by 6 % from one another.
    for (const Row& row :
         {Row{0.0, 1, .02820, .01743, .1058, .1058, .1594}, Row{0.25, 1, .02567, .01746, .1107, .1107, .1520},
          Row{0.3, 1, .02551, .01775, .1117, .1117, .1504},
          Row{0.3, 1.5, .07982, .08007, .0980, .2690, .3042},
          Row{0.3, 2, .23116, .24184, .0855, .4893, .5201}}) {
        const auto found = [&](auto value) {
            return extrapolated(row.ratio, Edge::corners, row.poisson, value);
        };
        EXPECT_NEAR(found([](const QuarterPlate& p) { return p.middle(); }) / row.lift, 1, to_series)
            << row.poisson << " " << row.ratio;
        EXPECT_NEAR(found([](const QuarterPlate& p) { return p.lift(p.last_column(), 0); }) / row.side_lift,
                    1, to_series)
            << row.poisson << " " << row.ratio;
        EXPECT_NEAR(found([](const QuarterPlate& p) { return p.middle_moments_of().y; }) / row.short_way, 1,
                    digits(row.short_way));
        EXPECT_NEAR(found([](const QuarterPlate& p) { return p.middle_moments_of().x; }) / row.long_way, 1,
                    digits(row.long_way));
        const auto side = [](const QuarterPlate& p) {
            const std::size_t column = p.last_column() - 1;
            return 1.5 * p.moments(column, 0).x - 0.5 * p.moments(column, 1).x;
        };
        EXPECT_NEAR(found(side) / row.side_moment, 1, digits(row.side_moment));
    }
}

TEST(PlatePoints, BoltsInRows) {
    struct Row {
        double poisson, ratio, lift, short_way, long_way, between_lift, between_moment;
    };
    // By Fourier series, w·D/(q·b⁴) and M/(q·b²) with b the wider pitch; between: midway of two bolts that
    // far apart. Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, table of flat slabs (poisson
    // 0.2, from memory), has .00581 and .0331 for a square, .00292, .0092 and .0411 for 2.
    constexpr double not_given = 0;
    for (const Row& row : {Row{0.2, 1.0, .00580, .0331, .0331, .00435, not_given},
                           Row{0.3, 1.0, .00580, .0359, .0359, .00435, .0484},
                           Row{0.3, 1.5, .00338, .0169, .0398, .00326, .0436},
                           Row{0.3, 2.0, .00291, .0133, .0412, .00290, .0421}}) {
        const double pitch = row.ratio * quarter_side;
        const auto found = [&](auto value) {
            return extrapolated(row.ratio, Edge::grid, row.poisson, value);
        };
        const auto three_digits = [](double value) { return 0.000006 / value + to_series; };
        EXPECT_NEAR(found([&](const QuarterPlate& p) { return p.middle(pitch); }) / row.lift, 1,
                    three_digits(row.lift))
            << row.ratio;
        EXPECT_NEAR(found([&](const QuarterPlate& p) { return p.lift(p.last_column(), 0, pitch); }) /
                        row.between_lift,
                    1, three_digits(row.between_lift))
            << row.ratio;
        EXPECT_NEAR(found([&](const QuarterPlate& p) { return p.middle_moments_of(pitch).y; }), row.short_way,
                    6e-5);
        EXPECT_NEAR(found([&](const QuarterPlate& p) { return p.middle_moments_of(pitch).x; }), row.long_way,
                    6e-5);
        if (row.between_moment == not_given) continue;
        EXPECT_NEAR(found([&](const QuarterPlate& p) { return p.moments(p.last_column() - 1, 0, pitch).x; }),
                    row.between_moment, 6e-5);
    }
}

// Around a bolt the moments grow without bound; on rings as wide as a washer they are those of the series.
TEST(PlatePoints, BesideABolt) {
    constexpr double poisson = 0.3;
    const QuarterPlate plate = quarter_plate(1, Edge::grid, 32, thin, poisson);
    int looked = 0;
    for (std::size_t column = 0; column < 5; ++column) {
        for (std::size_t row = 0; row < 5; ++row) {
            const double x = (plate.grid.x_mm[column] + plate.grid.x_mm[column + 1]) / 2;
            const double y = (plate.grid.y_mm[row] + plate.grid.y_mm[row + 1]) / 2;
            const double ring = std::hypot(x, y) / quarter_side;
            if (ring < 0.039 || ring > 0.06) continue;
            const Moments m = plate.moments(column, row);
            const double c = x / std::hypot(x, y), s = y / std::hypot(x, y);
            const double twist = 2 * m.xy * c * s;
            const double log = (1 + poisson) * std::log(1 / ring);
            const double each = -1 / (4 * std::numbers::pi);
            const double around = each * (log - (0.8105 + 1.8105 * poisson));
            const double outward = each * (log - (1.8105 + 0.8105 * poisson));
            EXPECT_NEAR((m.x * s * s + m.y * c * c - twist) / around, 1, 0.02) << ring;
            EXPECT_NEAR((m.x * c * c + m.y * s * s + twist) / outward, 1, 0.02) << ring;
            ++looked;
        }
    }
    EXPECT_GE(looked, 9);
}

} // namespace
} // namespace drawercast::mold
