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
        EXPECT_EQ(fixing.pins.size(), row.screws == 1 ? 1U : 0U) << row.name;
        EXPECT_EQ(fixing.diameter_mm, screw_mm) << row.name;
        for (const shape::Vec screw : fixing.screws)
            EXPECT_GE(inside(outline, screw), row.inside_mm - 1e-3) << row.name;
        if (row.screws == 1) continue;
        EXPECT_NEAR(length(fixing.screws[1] - fixing.screws[0]), row.apart_mm, 2.5) << row.name;
    }
}

/// Too narrow for a screw 15 mm inside: what splits the wood least of what still holds.
TEST(Fixing, slim_pieces_take_thinner_screws_then_pins_then_glue_alone) {
    struct Row {
        double wide_mm;
        std::size_t screws;
        double diameter_mm;
        std::size_t pins;
    };
    for (const Row& row : {Row{12, 2, 4, 0}, Row{11, 2, 3, 0}, Row{9, 2, 3, 0}, Row{8, 0, 4, 2},
                           Row{6, 0, 4, 2}, Row{5, 0, 4, 0}}) {
        const shape::Contour outline = built::contour(Rectangle{100, row.wide_mm, 0});
        const Fixing fixing = fixing_of(outline);
        ASSERT_EQ(fixing.screws.size(), row.screws) << row.wide_mm;
        ASSERT_EQ(fixing.pins.size(), row.pins) << row.wide_mm;
        EXPECT_EQ(fixing.diameter_mm, row.diameter_mm) << row.wide_mm;
        for (const auto& points : {fixing.screws, fixing.pins})
            for (const shape::Vec at : points) EXPECT_NEAR(inside(outline, at), row.wide_mm / 2, 1e-6);
    }
}

TEST(Fixing, a_short_pieces_pin_stands_well_inside_and_clear_of_its_screw) {
    for (const shape::Given& given :
         std::initializer_list<shape::Given>{Rectangle{39, 39, 0}, Circle{24}, Rectangle{28, 10, 0},
                                             Rectangle{10, 28, 0}, Rectangle{30, 7, 0}}) {
        const shape::Contour outline = built::contour(given);
        const Fixing fixing = fixing_of(outline);
        std::vector<shape::Vec> all = fixing.screws;
        all.insert(all.end(), fixing.pins.begin(), fixing.pins.end());
        ASSERT_EQ(all.size(), 2U);
        ASSERT_FALSE(fixing.pins.empty());
        EXPECT_GE(length(all[1] - all[0]), 5);
        for (const shape::Vec at : fixing.pins) EXPECT_GE(inside(outline, at), 3 - 1e-3);
    }
}

TEST(Fixing, holes_of_a_piece_are_kept_clear_of) {
    const shape::Contour outline = built::contour(Rectangle{120, 60, 0});
    const shape::Ring hole{{-40, -10}, {40, -10}, {40, 10}, {-40, 10}};
    const Fixing fixing = fixing_of(outline, {hole});
    ASSERT_EQ(fixing.screws.size(), 2U);
    for (const shape::Vec at : fixing.screws)
        EXPECT_GE(shape::gap_between(shape::Contour{{at}, 0}, shape::Contour{hole, 0}).mm, 6);
}

} // namespace
} // namespace drawercast::casting
