// SPDX-License-Identifier: GPL-3.0-or-later
// Only what changed is painted again, counted by the regions of the paint events; and what the blue pencil
// draws, where.
#include "job/edit.h"

#include "app_window/hand.h"
#include "canvas/ink_difference.h"
#include "canvas/live_dimensions.h"
#include "canvas/word_room.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace drawercast::app {
namespace {

using shape::Box;
using shape::Vec;
using test::Desktop;
using test::Hand;
using test::PaintWatch;

struct CanvasPaint : testing::Test {
    Desktop desk;
    Hand hand{desk};
    SheetCanvas& canvas = desk.window.sheets().canvas();

    void SetUp() override {
        test::open_pockets(desk, {{60, 60}, {200, 150}, {340, 240}, {340, 60}, {60, 240}});
        hand.hover({130, 20});
    }
    /// Of the drawer, in view pixels.
    QRect px(const Box& mm) { return canvas.view().to_px(mm).toAlignedRect(); }
};

TEST_F(CanvasPaint, pointing_paints_the_pockets_pointed_at) {
    PaintWatch watch(canvas);
    watch.painted();
    hand.hover({200, 150});
    const auto painted = watch.painted();
    EXPECT_FALSE(painted.isEmpty());
    EXPECT_TRUE(px(Box{{165, 115}, {235, 185}}).contains(painted.boundingRect()));
    hand.hover({201, 151});
    EXPECT_TRUE(watch.painted().isEmpty()) << "nothing is new";
}

TEST_F(CanvasPaint, choosing_paints_what_was_and_what_is_chosen) {
    hand.click({60, 60});
    PaintWatch watch(canvas);
    watch.painted();
    hand.click({340, 240});
    const auto painted = watch.painted();
    EXPECT_LT(PaintWatch::area(painted) / PaintWatch::area(QRegion(canvas.rect())), 0.15);
    EXPECT_FALSE(painted.intersects(px(Box{{172, 122}, {228, 178}}))) << "the one between";
}

TEST_F(CanvasPaint, a_step_of_a_drag_paints_a_little) {
    hand.press({200, 150});
    hand.drag_on({200, 150}, {215, 160});
    PaintWatch watch(canvas);
    watch.painted();
    hand.move({216, 161});
    const double share = watch.painted_share();
    EXPECT_GT(share, 0);
    EXPECT_LT(share, 0.12);
    hand.release({216, 161});
    EXPECT_LT(watch.painted_share(), 0.15) << "letting go draws one pocket into the picture";
}

TEST_F(CanvasPaint, a_step_that_a_snap_holds_works_nothing_out) {
    desk.preferences.set_snapping(true);
    hand.press({200, 150});
    hand.drag_on({200, 150}, {215, 160});
    int answers = 0;
    QObject::connect(&desk.window.document(), &Document::shown_changed, &canvas, [&] { ++answers; });
    hand.move({215.3, 160.2});
    EXPECT_EQ(answers, 0);
    hand.move({225, 160});
    EXPECT_EQ(answers, 1);
    hand.release({225, 160});
}

TEST_F(CanvasPaint, what_is_painted_in_parts_is_what_is_painted_whole) {
    hand.drag({200, 150}, {250, 120});
    hand.click({60, 60});
    hand.hover({340, 60});
    desk.window.actions()["edit.undo"]->trigger();
    hand.key(Qt::Key_Right);
    QApplication::processEvents();
    const auto in_parts = canvas.grab().toImage();
    canvas.set_theme(theme::dark_theme()); // all is drawn anew, twice
    canvas.set_theme(theme::light_theme());
    EXPECT_EQ(in_parts, canvas.grab().toImage());
}

TEST_F(CanvasPaint, something_else_changed_paints_nothing_here) {
    PaintWatch watch(canvas);
    watch.painted();
    auto job = desk.window.document().job();
    job.title = "Another title";
    desk.window.document().commit("title", job);
    EXPECT_TRUE(watch.painted().isEmpty());
}

TEST(InkDifference, only_what_one_of_them_has) {
    const auto square = [](double at) {
        return sheets::Ink(sheets::Fill{sheets::path_of(Box{{at, at}, {at + 10, at + 10}}), Qt::black});
    };
    const sheets::Inks before{sheets::About{"a"}, square(0), sheets::About{"b"}, square(100)};
    EXPECT_TRUE(changed_region(before, before).isEmpty());
    const sheets::Inks after{sheets::About{"a"}, square(0), sheets::About{"b"}, square(200)};
    const auto region = changed_region(before, after);
    EXPECT_FALSE(region.contains(QPoint(5, 5)));
    EXPECT_TRUE(region.contains(QPoint(105, 105)));
    EXPECT_TRUE(region.contains(QPoint(205, 205)));
    EXPECT_TRUE(changed_region(before, {}).contains(QPoint(5, 5)));
    EXPECT_TRUE(changed_region({}, before).contains(QPoint(105, 105)));
}

TEST(LiveDimensions, nearest_edges_and_neighbor) {
    Desktop desk;
    test::open_pockets(desk, {{100, 100}, {220, 100}});
    const auto& plan = desk.window.document().plan().drawers.front();
    const auto lines = live_dimensions(plan, {"i1#1"});
    ASSERT_EQ(lines.size(), 3U);
    const auto& insert = plan.insert->box;
    EXPECT_NEAR(lines[0].from.x, insert.min.x, 1e-9);
    EXPECT_NEAR(lines[0].to.x, plan.pockets[0]->box.min.x, 1e-9);
    EXPECT_NEAR(lines[1].from.y, insert.min.y, 1e-9);
    EXPECT_NEAR(shape::length(lines[2].to - lines[2].from), 62, 1e-6)
        << "120 between the middles, 60 wide less one millimeter a side";
}

TEST(LiveDimensions, never_across_another_pocket) {
    Desktop desk;
    test::open_pockets(desk, {{150, 100}, {60, 100}, {150, 240}, {60, 240}, {340, 240}});
    const auto& plan = desk.window.document().plan().drawers.front();
    for (const auto& pocket : plan.pockets)
        for (const auto& line : live_dimensions(plan, {pocket->subject})) {
            Box covered;
            covered.add(line.from);
            covered.add(line.to);
            for (const auto& other : plan.pockets) {
                if (other == pocket) continue;
                EXPECT_FALSE(shape::near(other->box.grown(-1), covered))
                    << pocket->subject << " across " << other->subject;
            }
        }
}

TEST(LiveDimensions, a_check_says_its_own_distance) {
    Desktop desk;
    test::open_pockets(desk, {{150, 150}, {212, 150}});
    const auto& plan = desk.window.document().plan().drawers.front();
    ASSERT_FALSE(plan.checks.empty());
    EXPECT_EQ(live_dimensions(plan, {"i1#1"}).size(), 2U) << "the edges alone";
}

TEST(WordRoom, keeps_off_words_first_then_pockets) {
    sheets::Taken taken;
    taken.words = {Box{{0, 0}, {40, 20}}};
    taken.pockets = {Box{{100, 0}, {140, 20}}};
    WordRoom room(taken, {{0, 0}, {400, 400}});
    const Vec size{30, 14}, on_words{20, 10}, on_pocket{120, 10}, free{200, 10};
    EXPECT_EQ(room.place({on_words, on_pocket, free}, size).center(), free);
    EXPECT_EQ(room.place({on_words, on_pocket, free}, size).center(), on_pocket) << "the free one is taken";
    const Vec outside{-50, 10};
    EXPECT_EQ(WordRoom(taken, {{0, 0}, {400, 400}}).place({outside, on_words}, size).center(), on_words)
        << "what is out of view says nothing";
}

} // namespace
} // namespace drawercast::app
