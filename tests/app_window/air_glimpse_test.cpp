// SPDX-License-Identifier: GPL-3.0-or-later
// While a pocket is dragged the place that would fill last follows it.
#include "job/edit.h"
#include "plan/air_stage.h"

#include "app_window/hand.h"

#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

using test::Desktop;
using test::Hand;

AirGlimpse& glimpse(Desktop& desk) { return desk.window.sheets().canvas().air_glimpse(); }

std::optional<shape::Vec> expected(Desktop& desk) {
    Document& document = desk.window.document();
    const auto last =
        plan::last_air(document.shown(), *document.shown().drawers.front(), document.plan().drawers.front());
    if (!last) return std::nullopt;
    return last->vec();
}

TEST(AirGlimpse, follows_a_dragged_pocket_and_goes_with_the_drag) {
    Desktop desk;
    test::open_pockets(desk, {{100, 150}, {220, 150}, {320, 100}});
    Hand hand(desk);
    EXPECT_FALSE(glimpse(desk).at());
    hand.press({220, 150});
    hand.drag_on({220, 150}, {220, 220});
    glimpse(desk).wait();
    const auto first = glimpse(desk).at();
    ASSERT_TRUE(first);
    EXPECT_EQ(first, expected(desk));
    hand.drag_on({220, 220}, {140, 230});
    glimpse(desk).wait();
    ASSERT_TRUE(glimpse(desk).at());
    EXPECT_EQ(glimpse(desk).at(), expected(desk));
    EXPECT_NE(glimpse(desk).at(), first);
    hand.release({140, 230});
    EXPECT_FALSE(glimpse(desk).at());
}

TEST(AirGlimpse, what_comes_after_the_drag_is_not_shown) {
    Desktop desk;
    test::open_pockets(desk, {{100, 150}, {220, 150}});
    Hand hand(desk);
    hand.press({220, 150});
    hand.drag_on({220, 150}, {240, 200});
    hand.key(Qt::Key_Escape);
    glimpse(desk).wait();
    EXPECT_FALSE(glimpse(desk).at());
    hand.release({240, 200});
}

} // namespace
} // namespace drawercast::app
