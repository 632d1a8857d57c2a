// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/gap.h"
#include "shape/region.h"

#include "core/shape/random_shapes.h"

#include <gtest/gtest.h>

namespace drawercast::shape {
namespace {

using namespace testing;

Contour rectangle(double w, double h, Pose pose) { return placed(*contour_of(Rectangle{w, h, 0}), pose); }

TEST(OverlapWidth, KnownOverlaps) {
    const Contour circle = *contour_of(Circle{40});
    const Contour horseshoe = *contour_of(Polygon{
        {{{0, 0}}, {{60, 0}}, {{60, 50}}, {{40, 50}}, {{40, 20}}, {{20, 20}}, {{20, 50}}, {{0, 50}}}});
    struct Row {
        const char* name;
        Contour a, b;
        double mm;
    };
    const Row rows[] = {
        {"apart", rectangle(20, 10, {}), rectangle(20, 10, {{30, 0}, 0}), 0},
        {"boxes overlap, outlines do not", circle, rectangle(10, 10, {{21, 21}, 0}), 0},
        {"side by side by 3", rectangle(20, 10, {}), rectangle(20, 10, {{17, 0}, 0}), 3},
        {"corners by 3 and 2", rectangle(20, 10, {}), rectangle(20, 10, {{17, 8}, 0}), 2},
        {"one holds the other", rectangle(100, 80, {}), rectangle(30, 12, {{5, 5}, 30}), 12},
        {"lens of two circles", circle, placed(circle, {{36, 0}, 0}), 4},
        {"crossed", rectangle(100, 8, {}), rectangle(100, 12, {{0, 0}, 90}), 8},
        {"two pieces: the wider counts", horseshoe, rectangle(100, 6, {{46, 40}, 0}), 6},
        {"over one prong", horseshoe, rectangle(16, 30, {{49, 40}, 0}), 16},
    };
    for (const Row& row : rows) {
        SCOPED_TRACE(row.name);
        EXPECT_NEAR(overlap_width(row.a, row.b), row.mm, 0.003);
        EXPECT_NEAR(overlap_width(row.b, row.a), row.mm, 0.003);
    }
}

/// Against the least extent of the shared area over all directions, a tenth of a degree apart.
TEST(OverlapWidth, AgreesWithAllDirections) {
    Dice dice(45);
    int overlapping = 0;
    for (int i = 0; i < 150; ++i) {
        const Contour a = placed(any_outline(dice), any_pose(dice, 20));
        const Contour b = placed(any_outline(dice), any_pose(dice, 20));
        const Region both = *shared(region_of(a), region_of(b));
        double widest = 0;
        for (const Patch& patch : both.patches) {
            double least = any_distance;
            for (double degrees = 0; degrees < 180; degrees += 0.1) {
                const Turn turn = Turn::of_degrees(degrees);
                double low = any_distance;
                double high = -any_distance;
                for (const Vec p : patch.outer) {
                    low = std::min(low, turn(p).x);
                    high = std::max(high, turn(p).x);
                }
                least = std::min(least, high - low);
            }
            widest = std::max(widest, least);
        }
        overlapping += widest > 0;
        EXPECT_LE(overlap_width(a, b), widest + 1e-9);
        EXPECT_GE(overlap_width(a, b), widest * (1 - 0.002) - 0.08) << "pair " << i;
    }
    EXPECT_GT(overlapping, 80);
}

} // namespace
} // namespace drawercast::shape
