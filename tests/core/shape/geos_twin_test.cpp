// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/region.h"
#include "shape/trace.h"

#include "core/shape/geos_twin.h"
#include "core/shape/random_shapes.h"

#include <gtest/gtest.h>

#include <cstdlib>

/// The pairs that makers make by snapping: flush, tangent, duplicated, turned by 15°, in steps of 0.1 mm. Set
/// operations on them are known to lose whole outlines. DRAWERCAST_LONG=1 runs ten times as many.
namespace drawercast::shape {
namespace {

using namespace testing;

constexpr double coarse_mm = 0.05; // chords of the test's arcs: the areas are of the same rings on both sides

int pairs_per_kind() {
    const char* asked = std::getenv("DRAWERCAST_LONG");
    return asked != nullptr && *asked == '1' ? 20'000 : 2'000;
}

struct Pair {
    Ring a, b;
};

Contour rectangle(double w, double h, double corner = 0) { return *contour_of(Rectangle{w, h, corner}); }

Pair at(Dice& dice, const Contour& a, const Contour& b, Vec b_from_a, double b_turn_deg = 0) {
    const Pose pose{{dice.step(0, 500), dice.step(0, 400)}, 15.0 * dice.whole(0, 23)};
    return {traced(placed(a, pose), coarse_mm),
            traced(placed(b, {placed(b_from_a, pose), pose.turn_deg + b_turn_deg}), coarse_mm)};
}

Pair flush_rectangles(Dice& dice) {
    const double w = dice.step(10, 120);
    const double h = dice.step(10, 90);
    const double v = dice.step(10, 80);
    return at(dice, rectangle(w, h), rectangle(v, dice.step(10, 60)),
              {(w + v) / 2, dice.step(-h / 2, h / 2)});
}

Pair flush_capsules(Dice& dice) {
    const double width = dice.step(8, 40);
    const double length_mm = width + dice.step(0, 80);
    const Contour capsule = *contour_of(Capsule{length_mm, width});
    return at(dice, capsule, capsule, {dice.step(-length_mm / 2, length_mm / 2), width});
}

Pair tangent_circles(Dice& dice) {
    const double d = dice.step(5, 60);
    const double w = dice.step(10, 100);
    const double h = dice.step(10, 100);
    const Contour circle = *contour_of(Circle{d});
    if (dice.whole(0, 1) == 0) return at(dice, circle, *contour_of(Circle{w}), {(d + w) / 2, 0});
    const double side =
        dice.whole(0, 1) == 0 ? 1 : -1; // from outside, or inside the rectangle along its side
    return at(dice, rectangle(w, h), circle, {dice.step(-w / 2, w / 2), h / 2 + side * d / 2});
}

Pair duplicated(Dice& dice) {
    const Contour outline = any_outline(dice);
    return at(dice, outline, outline, {0, 0}, dice.whole(0, 3) == 0 ? 180 : 0);
}

Pair touching_the_drawer_edge(Dice& dice) {
    const double w = dice.step(100, 480);
    const double h = dice.step(80, 360);
    const double u = dice.step(10, 80);
    const double v = dice.step(10, 60);
    const bool corner = dice.whole(0, 3) == 0;
    const double y = corner ? (h - v) / 2 : dice.step(-(h - v) / 2, (h - v) / 2);
    return at(dice, rectangle(w, h), rectangle(u, v, dice.whole(0, 1) == 0 ? 0 : 3), {-(w - u) / 2, y});
}

Pair free_outline_and_its_filling(Dice& dice) { // an inlet and what just fits it
    const double w = dice.step(60, 120);
    const double h = dice.step(50, 90);
    const double slot = dice.step(10, 40);
    const double depth = dice.step(10, h - 5);
    const Contour u{{{-w / 2, 0},
                     {w / 2, 0},
                     {w / 2, h},
                     {slot / 2, h},
                     {slot / 2, h - depth},
                     {-slot / 2, h - depth},
                     {-slot / 2, h},
                     {-w / 2, h}},
                    0};
    return at(dice, u, rectangle(slot, depth), {0, h - depth / 2});
}

Pair turned_and_turned_back(Dice& dice) { // the same to 1e-13
    const Contour outline = any_outline(dice);
    const double turn = 15.0 * dice.whole(1, 23);
    const Vec where{dice.step(0, 500), dice.step(0, 400)};
    Contour noisy = placed(placed(outline, {where, turn}), {{0, 0}, -turn});
    return at(dice, placed(outline, {placed(where, {{0, 0}, -turn}), 0}), noisy, {0, 0});
}

Pair sharing_a_corner_or_a_side(Dice& dice) { // one within the other or across it, sides on one line
    const double w = dice.step(20, 120);
    const double h = dice.step(20, 90);
    const double u = dice.step(5, w);
    const double v = dice.step(5, 2 * h);
    return at(dice, rectangle(w, h), rectangle(u, v), {(w - u) / 2, dice.step(-h / 2, h / 2)});
}

struct Kind {
    const char* name;
    Pair (*make)(Dice&);
};

class SnappedPairs : public ::testing::TestWithParam<Kind> {};

TEST_P(SnappedPairs, AreasAgreeWithGeos) {
    Dice dice(81);
    const Geos geos;
    for (int i = 0; i < pairs_per_kind(); ++i) {
        const Pair pair = GetParam().make(dice);
        const Region a = region_of(pair.a);
        const Region b = region_of(pair.b);
        const auto left = geos.polygon(pair.a);
        const auto right = geos.polygon(pair.b);
        // the grid moves a point by half a step at most, in x and in y
        const double slack = (perimeter(pair.a) + perimeter(pair.b)) * 0.5e-3 + 1e-3;
        const auto expect = [&](const char* what, const Expected<Region>& got, double expected) {
            ASSERT_TRUE(got) << what << " of pair " << i << ": " << one_line(got.error());
            ASSERT_NEAR(area(*got), expected, slack) << what << " of pair " << i;
        };
        expect("union", united(a, b), geos.area(geos.united(left, right)));
        expect("intersection", shared(a, b), geos.area(geos.shared(left, right)));
        expect("difference", without(a, b), geos.area(geos.without(left, right)));
        if (HasFatalFailure()) return;
    }
}

INSTANTIATE_TEST_SUITE_P(Geos, SnappedPairs,
                         ::testing::Values(Kind{"FlushRectangles", flush_rectangles},
                                           Kind{"FlushCapsules", flush_capsules},
                                           Kind{"TangentCircles", tangent_circles},
                                           Kind{"Duplicated", duplicated},
                                           Kind{"TouchingTheDrawerEdge", touching_the_drawer_edge},
                                           Kind{"FreeOutlineAndItsFilling", free_outline_and_its_filling},
                                           Kind{"TurnedAndTurnedBack", turned_and_turned_back},
                                           Kind{"SharingACornerOrASide", sharing_a_corner_or_a_side}),
                         [](const auto& kind) { return std::string(kind.param.name); });

/// Rows of blocks set flush, turned as a whole: unions of unions, then the drawer less all of them.
TEST(SnappedRows, AreasAgreeWithGeos) {
    Dice dice(82);
    const Geos geos;
    for (int i = 0; i < pairs_per_kind() / 20; ++i) {
        const Pose pose{{dice.step(0, 500), dice.step(0, 400)}, 15.0 * dice.whole(0, 23)};
        const Ring drawer = traced(placed(rectangle(400, 300), pose));
        std::vector<Region> blocks;
        auto all = geos.polygon(drawer);
        double x = -200;
        double around = perimeter(drawer);
        for (int k = 0; k < 7; ++k) {
            const double w = dice.step(20, 50);
            const double h = dice.step(20, 120);
            const Vec middle{x + w / 2, dice.whole(0, 2) == 0 ? -150 + h / 2 : dice.step(-80, 80)};
            x += w;
            const Contour block = rectangle(w, h, dice.whole(0, 2) == 0 ? 4 : 0);
            const Ring ring = traced(placed(block, {placed(middle, pose), pose.turn_deg}), coarse_mm);
            blocks.push_back(region_of(ring));
            all = geos.without(all, geos.polygon(ring));
            around += perimeter(ring);
        }
        const auto covered = united(blocks);
        ASSERT_TRUE(covered) << one_line(covered.error()) << " row " << i;
        const auto open = without(region_of(drawer), *covered);
        ASSERT_TRUE(open) << one_line(open.error()) << " row " << i;
        ASSERT_NEAR(area(*open), geos.area(all), around * 1e-3) << " row " << i;
    }
}

} // namespace
} // namespace drawercast::shape
