// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/gap.h"
#include "shape/segments.h"

#include "core/shape/random_shapes.h"

#include <gtest/gtest.h>

namespace drawercast::shape {
namespace {

using namespace testing;

const Contour drawer = placed(*contour_of(Rectangle{480, 360, 0}), {{240, 180}, 0});
/// A drawer with an inlet from its right side, 40 wide and 100 deep.
const Contour with_inlet{
    {{0, 0}, {480, 0}, {480, 160}, {380, 160}, {380, 200}, {480, 200}, {480, 360}, {0, 360}}, 0};

Contour rectangle(double w, double h, double corner, Pose pose) {
    return placed(*contour_of(Rectangle{w, h, corner}), pose);
}
Contour circle(double d, Vec at) { return placed(*contour_of(Circle{d}), {at, 0}); }

struct Case {
    const char* name;
    Contour inner, outer;
    double mm;
};

TEST(GapInside, KnownCases) {
    const Contour round_drawer = placed(*contour_of(Rectangle{480, 360, 30}), {{240, 180}, 0});
    const double diagonal = std::sqrt(2.0);
    const Case cases[] = {
        {"well inside", rectangle(100, 50, 0, {{100, 60}, 0}), drawer, 35},
        {"touching", rectangle(100, 50, 0, {{50, 60}, 0}), drawer, 0},
        {"out by a part", rectangle(100, 50, 0, {{45, 60}, 0}), drawer, -5},
        {"wholly out", rectangle(100, 50, 0, {{-80, 60}, 0}), drawer, -130},
        {"out over a corner", rectangle(20, 20, 0, {{-7, -7}, 0}), drawer, -17 * diagonal},
        {"circle inside", circle(40, {30, 180}), drawer, 10},
        {"circle touching", circle(60, {30, 180}), drawer, 0},
        {"circle out, its middle in", circle(80, {30, 180}), drawer, -10},
        {"circle out, its middle too", circle(80, {-5, 180}), drawer, -45},
        {"as large as the drawer", drawer, drawer, 0},
        {"larger than the drawer", rectangle(500, 380, 0, {{240, 180}, 0}), drawer, -10 * diagonal},
        {"in a round corner", circle(20, {30, 30}), round_drawer, 20},
        {"over a round corner", rectangle(20, 20, 0, {{10, 10}, 0}), round_drawer, 30 - 30 * diagonal},
        {"in a circle", rectangle(6, 8, 0, {{0, 0}, 0}), *contour_of(Circle{16}), 3},
        {"in a capsule", circle(10, {20, 0}), *contour_of(Capsule{60, 20}), 5},
        {"beside an inlet", circle(40, {350, 180}), with_inlet, 10},
        {"over an inlet's end", circle(60, {360, 180}), with_inlet, -10},
        {"within the inlet", circle(10, {430, 180}), with_inlet, -20},
        {"bridging the inlet", rectangle(10, 100, 0, {{430, 180}, 0}), with_inlet, -20},
        {"inlet deep inside it", rectangle(240, 100, 0, {{340, 180}, 0}), with_inlet, -20},
    };
    for (const Case& c : cases) {
        SCOPED_TRACE(c.name);
        EXPECT_NEAR(gap_inside(c.inner, c.outer).mm, c.mm, 2e-3 * (c.mm < 0 && !convex(c.outer)) + 1e-9);
        const Gap cut = gap_inside(c.inner, c.outer, 15);
        if (c.mm <= 15) {
            EXPECT_NEAR(cut.mm, gap_inside(c.inner, c.outer).mm, 1e-12);
        }
    }
}

/// Signed distance of a point from the boundary of a convex or sharp outline.
double depth(const Contour& outer, Vec p) {
    const double mm = length(p - nearest_on_core(outer.core, p));
    return (holds(outer.core, p) ? mm : -mm) + outer.round_mm;
}

/// Against the least depth of many points of the inner outline's boundary.
TEST(GapInside, AgreesWithPointsOfTheBoundary) {
    Dice dice(41);
    const Contour outers[] = {drawer, placed(*contour_of(Rectangle{300, 200, 40}), {{200, 180}, 20}),
                              with_inlet, placed(*contour_of(Capsule{300, 150}), {{240, 180}, 10}),
                              star(dice, 36, 150, 200)};
    for (int i = 0; i < 1500; ++i) {
        const Contour& outer = outers[i % 5];
        const Contour inner = placed(any_outline(dice), any_pose(dice, i % 2 == 0 ? 250 : 120));
        const Ring ring = traced(inner);
        double least = any_distance;
        for (std::size_t k = 0; k < ring.size(); ++k)
            for (int part = 0; part < 20; ++part)
                least = std::min(
                    least, depth(outer, ring[k] + (ring[(k + 1) % ring.size()] - ring[k]) * (part / 20.0)));
        const Gap gap = gap_inside(inner, outer);
        // points may miss the nearest by half their spacing, and that counts little where it counts to second
        // order
        double spacing = 0;
        for (std::size_t k = 0; k < ring.size(); ++k)
            spacing = std::max(spacing, length(ring[(k + 1) % ring.size()] - ring[k]) / 40);
        EXPECT_LE(gap.mm, least + 2 * chord_sagitta_mm) << "pair " << i;
        EXPECT_GE(gap.mm, least - spacing - 2 * chord_sagitta_mm) << "pair " << i;
        if (std::abs(gap.mm) > 1e-6) {
            EXPECT_NEAR(length(gap.a - gap.b), std::abs(gap.mm), 1e-8) << "pair " << i;
        }
    }
}

} // namespace
} // namespace drawercast::shape
