// SPDX-License-Identifier: GPL-3.0-or-later
#include "layout/notch_edge.h"

#include "core/layout/random_layout.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace drawercast::layout {
namespace {

using shape::Vec;

PocketForm form_of(const std::vector<job::Level>& levels) {
    job::Object object = testing::object_of("i1", levels);
    object.fit_mm = 0;
    return *pocket_form(object, {}, fit_of(object, job::Firmness::firm), 60);
}

PocketForm rectangle() { return form_of({testing::sunk(shape::Rectangle{80, 40, 0}, 20)}); }

TEST(NotchEdge, NearestPlaceWithTheEdgesWayThere) {
    const NotchEdge edge(rectangle());
    const auto front = edge.nearest({10, -60});
    EXPECT_NEAR(front.at.x, 10, 1e-9);
    EXPECT_NEAR(front.at.y, -20, 1e-9);
    EXPECT_NEAR(std::remainder(front.turn_deg, 360), 0, 1e-9)
        << "counter-clockwise: to the right at the front";
    const auto right = edge.nearest({50, 5});
    EXPECT_NEAR(right.at.x, 40, 1e-9);
    EXPECT_NEAR(right.turn_deg, 90, 1e-9);
}

TEST(NotchEdge, MiddlesOfTheFourSides) {
    const auto middles = NotchEdge(rectangle()).middles();
    ASSERT_EQ(middles.size(), 4U);
    for (const auto& middle : middles)
        EXPECT_NEAR(std::abs(middle.at.x) / 40 + std::abs(middle.at.y) / 20, 1, 1e-9);
    EXPECT_TRUE(NotchEdge(form_of({testing::sunk(shape::Circle{50}, 20)})).middles().empty())
        << "a round pocket has no side";
}

TEST(NotchEdge, SlidesRoundAndRound) {
    const NotchEdge edge(rectangle());
    const auto start = edge.nearest({0, -20});
    const auto on = edge.slid(start, 40 + 7); // round the front right corner
    EXPECT_NEAR(on.at.x, 40, 1e-9);
    EXPECT_NEAR(on.at.y, -13, 1e-9);
    const auto back = edge.slid(on, -47);
    EXPECT_NEAR(back.at.x, start.at.x, 1e-9);
    EXPECT_NEAR(back.at.y, start.at.y, 1e-9);
    const auto round = edge.slid(start, 5 * 240);
    EXPECT_NEAR(round.at.x, start.at.x, 1e-6);
    EXPECT_NEAR(round.at.y, start.at.y, 1e-6);
}

TEST(NotchEdge, OfSeveralLevelsTheOuterOutline) {
    const NotchEdge edge(form_of({testing::sunk(shape::Rectangle{80, 40, 0}, 20),
                                  testing::sunk(shape::Circle{60}, 40)})); // bulges out in the middle
    const auto top = edge.nearest({0, 50});
    EXPECT_NEAR(top.at.x, 0, 0.1);
    EXPECT_NEAR(top.at.y, 30, 0.01);
    const auto corner = edge.nearest({41, 21});
    EXPECT_NEAR(corner.at.x, 40, 0.01);
    EXPECT_NEAR(corner.at.y, 20, 0.01);
}

/// Property: a seat lies on the edge, and sliding from it by a little moves it by as much along its way.
TEST(NotchEdge, SlidingFollowsTheWay) {
    testing::Dice dice(5);
    const NotchEdge edge(form_of({testing::sunk(testing::star(dice, 17, 20, 40), 20)}));
    for (int i = 0; i < 200; ++i) {
        const Vec point{dice.between(-60, 60), dice.between(-60, 60)};
        const auto seat = edge.nearest(point);
        EXPECT_NEAR(shape::length(edge.nearest(seat.at).at - seat.at), 0, 1e-9);
        const auto next = edge.slid(seat, 1e-4);
        EXPECT_LE(shape::length(next.at - seat.at), 1e-4 + 1e-9);
        if (std::abs(next.turn_deg - seat.turn_deg) > 1e-9) continue; // round a corner
        const double turn = seat.turn_deg * std::numbers::pi / 180;
        const Vec way{std::cos(turn), std::sin(turn)};
        EXPECT_NEAR(shape::dot(next.at - seat.at, way), 1e-4, 1e-9);
    }
}

} // namespace
} // namespace drawercast::layout
