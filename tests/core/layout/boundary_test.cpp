// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/boundary.h"

#include "core/layout/scene.h"

#include <gtest/gtest.h>

namespace drawercast::layout {
namespace {

using shape::Vec;

TEST(Boundary, AddsUpToThePerimeterAndPointsOutward) {
    const struct {
        const char* name;
        shape::Given given;
        double tolerance_mm;
    } rows[] = {{"rectangle", shape::Rectangle{60, 40, 0}, 1e-9},
                {"rounded", shape::Rectangle{60, 40, 7}, 1e-9},
                {"stadium from a rectangle", shape::Rectangle{60, 40, 20}, 1e-9},
                {"circle", shape::Circle{33}, 1e-9},
                {"capsule", shape::Capsule{60, 28}, 1e-9},
                {"capsule as wide as long", shape::Capsule{30, 30}, 1e-9},
                {"triangle", shape::Polygon{{{{0, 0}, 0}, {{50, 0}, 0}, {{10, 30}, 0}}}, 1e-9},
                {"reflex",
                 shape::Polygon{{{{0, 0}, 0}, {{50, 0}, 0}, {{50, 40}, 0}, {{30, 10}, 0}, {{0, 40}, 0}}},
                 1e-9}};
    for (const auto& row : rows) {
        const shape::Contour contour = shape::placed(*shape::contour_of(row.given), {{12, 34}, 25});
        for (const double step : {100.0, 3.0, 0.5}) {
            double sum = 0;
            Vec turned; // the normals of a closed boundary cancel
            for (const BoundaryPiece& piece : boundary_of(contour, step)) {
                EXPECT_LE(piece.mm, step + 1e-12);
                EXPECT_NEAR(length(piece.outward), 1, 1e-12);
                EXPECT_TRUE(shape::contains(contour, piece.middle - piece.outward * 0.01)) << row.name;
                EXPECT_FALSE(shape::contains(contour, piece.middle + piece.outward * 0.01)) << row.name;
                sum += piece.mm;
                turned = turned + piece.outward * piece.mm;
            }
            EXPECT_NEAR(sum, shape::perimeter(contour), row.tolerance_mm) << row.name << " " << step;
            if (step < 1) {
                EXPECT_NEAR(length(turned), 0, 1e-9) << row.name;
            }
        }
    }
}

} // namespace
} // namespace drawercast::layout
