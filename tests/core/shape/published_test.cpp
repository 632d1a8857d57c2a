// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/region.h"

#include "core/shape/random_shapes.h"

#include <gtest/gtest.h>

#include <functional>

/// Volumes of a concave quarter-round fillet around an outline by Pappus's centroid theorem: the fillet's
/// section A = r²(1 − π/4) times the way of its centroid, c = r(10 − 3π)/(3(4 − π)) from either wall. Here
/// the same volumes are summed from areas of outlines moved outward, which is how the cavity does it. Values
/// worked out apart from this program, six digits.
namespace drawercast::shape {
namespace {

using testing::pi;

/// ∫ [area(x(z)) − area(0)] dz over the fillet, x(z) = r − √(2rz − z²), z = r(1 − sin φ), by Simpson's rule.
double fillet_volume(double r, const std::function<double(double)>& area_moved_by) {
    constexpr int steps = 400;
    const double still = area_moved_by(0);
    double sum = 0;
    for (int i = 0; i <= steps; ++i) {
        const double phi = pi / 2 * i / steps;
        const double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
        sum += weight * (area_moved_by(r * (1 - std::cos(phi))) - still) * r * std::cos(phi);
    }
    return sum * (pi / 2 / steps) / 3;
}

double six_digits(double value) { return std::abs(value) * 5.1e-6; }

TEST(Published, FilletsAroundConvexOutlines) {
    struct Row {
        const char* name;
        Given given;
        double r, volume;
    };
    const Row rows[] = {
        {"cylinder, radius 20", Circle{40}, 5, 711.840},
        {"cylinder, radius 30", Circle{60}, 5, 1048.94},
        {"cylinder, radius 40", Circle{80}, 10, 5694.72},
        {"160 x 80", Rectangle{160, 80, 0}, 5, 2612.87},
        {"100 x 100", Rectangle{100, 100, 0}, 3, 780.699},
        {"200 x 50", Rectangle{200, 50, 0}, 10, 11031.3},
        {"160 x 80, corners 10", Rectangle{160, 80, 10}, 5, 2520.76},
        {"120 x 60", Rectangle{120, 60, 0}, 5, 1969.06},
        {"100 x 100 again", Rectangle{100, 100, 0}, 5, 2183.67},
        {"200 x 50 again", Rectangle{200, 50, 0}, 5, 2720.17},
    };
    for (const Row& row : rows) {
        SCOPED_TRACE(row.name);
        const Contour outline = *contour_of(row.given);
        const double volume = fillet_volume(row.r, [&](double x) {
            return area(Contour{outline.core, outline.round_mm + x});
        });
        EXPECT_NEAR(volume, row.volume, six_digits(row.volume));
    }
}

TEST(Published, FilletsInsideABore) {
    struct Row {
        double radius, r, volume;
    };
    for (const Row& row : {Row{20, 5, 636.543}, Row{30, 5, 973.639}, Row{40, 10, 5092.35}}) {
        const auto narrowed = [&](double x) { return area(*contour_of(Circle{2 * (row.radius - x)})); };
        EXPECT_NEAR(-fillet_volume(row.r, narrowed), row.volume, six_digits(row.volume));
    }
}

/// With mitered corners, outside a block and inside a box: by the checked offset, so to the grid.
TEST(Published, MiteredFillets) {
    struct Row {
        double w, h, r, outside, inside;
    };
    const Row rows[] = {
        {160, 80, 5, 2623.16, 2527.29}, {100, 100, 3, 782.921, 762.213}, {200, 50, 10, 11113.6, 10346.6}};
    for (const Row& row : rows) {
        const Region block = region_of(*contour_of(Rectangle{row.w, row.h, 0}));
        const double grid = perimeter(block) * row.r * grid_mm / 2;
        EXPECT_NEAR(fillet_volume(row.r, [&](double x) { return area(*offset_mitred(block, x)); }),
                    row.outside, grid);
        EXPECT_NEAR(-fillet_volume(row.r, [&](double x) { return area(*offset_mitred(block, -x)); }),
                    row.inside, grid);
    }
}

TEST(Published, PerimeterOfARoundedRectangle) {
    EXPECT_NEAR(perimeter(*contour_of(Rectangle{160, 80, 10})), 462.832, 5e-4);
}

} // namespace
} // namespace drawercast::shape
