// SPDX-License-Identifier: GPL-3.0-or-later
#include "shape/frame.h"

#include "core/shape/random_shapes.h"

#include <gtest/gtest.h>

#include <stdexcept>
#include <type_traits>

namespace drawercast::shape {
namespace {

using namespace testing;

template <class Asked>
concept TakenToMold = requires(const MoldMap& map, Asked asked) {
    map.to_mold(asked);
};
static_assert(TakenToMold<Point<InDrawer>> && TakenToMold<Outline<InDrawer>>);
static_assert(!TakenToMold<Point<InMold>> && !TakenToMold<Outline<InMold>> && !TakenToMold<Point<InObject>>);
static_assert(!std::is_convertible_v<Point<InMold>, Point<InDrawer>>);

const MoldMap map_of_drawer{Box{{0.5, 0.5}, {479.5, 359.5}}, 0.004};

TEST(MoldMap, MirrorsAndEnlarges) {
    const double k = 1 / 0.996;
    EXPECT_DOUBLE_EQ(map_of_drawer.enlargement(), k);
    const Point<InMold> corner = map_of_drawer.to_mold(Point<InDrawer>{479.5, 0.5});
    EXPECT_DOUBLE_EQ(corner.x_mm, 0) << "the drawer's right is the mold's left";
    EXPECT_DOUBLE_EQ(corner.y_mm, 0);
    const Point<InMold> back_left = map_of_drawer.to_mold(Point<InDrawer>{0.5, 359.5});
    EXPECT_NEAR(back_left.x_mm, 479 * k, 1e-12);
    EXPECT_NEAR(back_left.y_mm, 359 * k, 1e-12);
    EXPECT_DOUBLE_EQ(map_of_drawer.length_to_mold(60), 60 * k);
}

TEST(MoldMap, TurnsCountTheOtherWay) {
    const Pose pose{{100, 80}, 30};
    const Vec tip = placed(Vec{10, 0}, pose);
    const Vec there = map_of_drawer.to_mold(Point<InDrawer>::of(tip)).vec() -
                      map_of_drawer.to_mold(Point<InDrawer>::of(pose.at)).vec();
    EXPECT_NEAR(std::atan2(there.y, there.x) * 180 / pi, 150, 1e-9) << "180 - 30";
}

TEST(MoldMap, ThereAndBackIsTheSame) {
    Dice dice(21);
    for (int i = 0; i < 500; ++i) {
        const MoldMap map(
            Box{{dice.real(-5, 5), dice.real(-5, 5)}, {dice.real(200, 600), dice.real(200, 600)}},
            dice.real(0, 0.05));
        const Outline<InDrawer> outline{placed(any_outline(dice), any_pose(dice, 300))};
        const Outline<InMold> there = map.to_mold(outline);
        const double k = map.enlargement();
        EXPECT_NEAR(area(there.contour), area(outline.contour) * k * k, 1e-8 * area(outline.contour));
        EXPECT_GE(area(there.contour.core), 0) << "counter-clockwise again";
        const Outline<InDrawer> back = map.to_drawer(there);
        ASSERT_EQ(back.contour.core.size(), outline.contour.core.size());
        EXPECT_NEAR(back.contour.round_mm, outline.contour.round_mm, 1e-12);
        for (std::size_t v = 0; v < back.contour.core.size(); ++v)
            EXPECT_NEAR(length(back.contour.core[v] - outline.contour.core[v]), 0, 1e-11);
    }
}

/// Mirrored twice by the same reflection: exactly the same doubles where nothing is enlarged and the width is
/// binary.
TEST(MoldMap, TwiceMirroredIsIdentical) {
    const MoldMap map(Box{{0, 0}, {480, 360}}, 0);
    const Outline<InDrawer> outline{Contour{{{10, 20}, {70.5, 20}, {70.5, 60.25}, {30, 40}}, 2}};
    const Outline<InMold> once = map.to_mold(outline);
    const Outline<InMold> twice = map.to_mold(Outline<InDrawer>{once.contour});
    EXPECT_NE(once.contour, outline.contour);
    EXPECT_EQ(twice.contour, outline.contour);
}

TEST(MoldMap, AreasKeepTheirHoles) {
    Area<InDrawer> frame{
        {{Patch{{{0, 0}, {100, 0}, {100, 50}, {0, 50}}, {{{10, 10}, {10, 20}, {40, 20}, {40, 10}}}}}}};
    const MoldMap map(bounds(frame.region), 0.01);
    const Area<InMold> there = map.to_mold(frame);
    const double k2 = map.enlargement() * map.enlargement();
    EXPECT_NEAR(area(there.region), (5000 - 300) * k2, 1e-9);
    EXPECT_GT(area(there.region.patches[0].outer), 0);
    EXPECT_LT(area(there.region.patches[0].holes[0]), 0);
    EXPECT_NEAR(bounds(there.region.patches[0].holes[0]).min.x, 60 * map.enlargement(), 1e-12);
}

TEST(MoldMap, ImpossibleShrinkageIsAFaultOfOurs) {
    EXPECT_THROW(MoldMap(Box{{0, 0}, {1, 1}}, 0.2), std::logic_error);
    EXPECT_THROW(MoldMap(Box{{0, 0}, {1, 1}}, -0.01), std::logic_error);
    EXPECT_THROW(MoldMap(Box{}, 0.01), std::logic_error);
}

} // namespace
} // namespace drawercast::shape
