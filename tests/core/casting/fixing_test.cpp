// SPDX-License-Identifier: GPL-3.0-or-later
#include "casting/fixing.h"
#include "shape/gap.h"

#include "core/casting/builders.h"

#include <gtest/gtest.h>

namespace drawercast::casting {
namespace {

using shape::Capsule;
using shape::Circle;
using shape::Polygon;
using shape::Rectangle;

double inside(const shape::Contour& outline, shape::Vec p) {
    return shape::gap_inside(shape::Contour{{p}, 0}, outline).mm;
}

TEST(Fixing, table) {
    struct Row {
        const char* name;
        shape::Given outline;
        std::size_t screws;
        double apart_mm;  ///< of two
        double inside_mm; ///< at least
    };
    const Row rows[] = {
        {"plain", Rectangle{160, 80, 0}, 2, 130, 15},
        {"square", Rectangle{60, 60, 0}, 2, 30, 15},
        {"upright", Rectangle{40, 90, 4}, 2, 60, 15},
        {"slim: in its middle", Rectangle{120, 16, 0}, 2, 90, 7.8},
        {"just long enough", Rectangle{40, 40, 0}, 2, 10, 15},
        {"short: one and a pin", Rectangle{39, 39, 0}, 1, 0, 19},
        {"coin", Circle{24}, 1, 0, 11.7},
        {"large round", Circle{80}, 2, 50, 15},
        {"capsule", Capsule{100, 30}, 2, 70, 14.7},
        {"ell of slim arms", Polygon{{{{0, 0}}, {{90, 0}}, {{90, 20}}, {{20, 20}}, {{20, 80}}, {{0, 80}}}}, 2,
         60, 8},
        {"ell", Polygon{{{{0, 0}}, {{90, 0}}, {{90, 40}}, {{40, 40}}, {{40, 80}}, {{0, 80}}}}, 2, 60, 15},
    };
    for (const Row& row : rows) {
        const shape::Contour outline = built::contour(row.outline);
        const Fixing fixing = fixing_of(outline);
        ASSERT_EQ(fixing.screws.size(), row.screws) << row.name;
        EXPECT_EQ(fixing.pin, row.screws == 1) << row.name;
        for (const shape::Vec screw : fixing.screws)
            EXPECT_GE(inside(outline, screw), row.inside_mm - 1e-3) << row.name;
        if (row.screws == 1) continue;
        EXPECT_NEAR(length(fixing.screws[1] - fixing.screws[0]), row.apart_mm, 2.5) << row.name;
    }
}

} // namespace
} // namespace drawercast::casting
