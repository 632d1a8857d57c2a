// SPDX-License-Identifier: GPL-3.0-or-later
// Distances taken on the sheet, and the menus that a right click opens.
#include "app_window/hand.h"
#include "canvas/measure_point.h"
#include "window/menu_key.h"

#include <QMenu>
#include <QTest>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

using shape::Vec;
using test::Desktop;

class MeasureTest : public testing::Test {
  protected:
    Desktop desk;
    Document& document = desk.window.document();
    SheetCanvas& canvas = desk.window.sheets().canvas();
    test::Hand hand{desk};

    void open(const std::vector<Vec>& at) { test::open_pockets(desk, at); }
    shape::Box box(const std::string& subject) { return test::pocket(desk, subject)->box; }
    double measured() {
        const auto& one = canvas.measured_distance();
        return one ? shape::length(one->to.at - one->from.at) : -1;
    }
    /// Menu texts of what popped up, closed again.
    QStringList popped() {
        QApplication::processEvents();
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        QStringList words;
        if (menu == nullptr) return words;
        for (auto* action : menu->actions()) words << action->objectName();
        menu->close();
        QApplication::processEvents();
        return words;
    }
};

TEST_F(MeasureTest, a_wall_is_measured_from_edge_to_edge_wherever_one_takes_hold_near_it) {
    open({{100, 150}, {220, 150}});
    desk.window.actions()["place.measure"]->trigger();
    ASSERT_TRUE(canvas.measuring());
    const auto before = document.job();
    const double off = 4 / canvas.view().px_per_mm(); // a shaky hand
    hand.drag({box("i1#1").max.x + off, 150}, {box("i1#2").min.x - off, 150});
    EXPECT_NEAR(measured(), box("i1#2").min.x - box("i1#1").max.x, 1e-3);
    EXPECT_EQ(document.job(), before);
    EXPECT_EQ(document.undo_stack().count(), 0);
    hand.key(Qt::Key_Escape);
    EXPECT_EQ(measured(), -1);
    EXPECT_TRUE(canvas.measuring()) << "first the line, then the tool";
    hand.key(Qt::Key_Escape);
    EXPECT_FALSE(canvas.measuring());
    EXPECT_FALSE(desk.window.actions()["place.measure"]->isChecked());
}

TEST_F(MeasureTest, two_clicks_do_as_well_and_shift_keeps_it_level) {
    open({{100, 150}});
    desk.window.actions()["place.measure"]->trigger();
    hand.held = Qt::ControlModifier; // lets go of edges
    hand.click({250, 100});
    hand.hover({350, 130});
    hand.held = Qt::ControlModifier;
    hand.click({350, 130});
    EXPECT_NEAR(measured(), std::hypot(100, 30), 1e-6);
    hand.held = Qt::ShiftModifier;
    hand.drag({250, 100}, {350, 130});
    EXPECT_NEAR(canvas.measured_distance()->to.at.y, canvas.measured_distance()->from.at.y, 1e-9);
}

TEST_F(MeasureTest, corners_win_over_edges_and_nothing_in_reach_is_the_pointer) {
    open({{100, 150}});
    const auto& plan = document.plan().drawers.front();
    const auto corner = plan.insert->box.min;
    const auto near = measure_point(plan, corner + Vec{3, 0.1}, 4); // the edge is nearer
    EXPECT_EQ(near.on, MeasurePoint::On::corner);
    EXPECT_NEAR(shape::length(near.at - corner), 0, 1e-2);
    const auto edge = measure_point(plan, {150, corner.y + 1}, 1.2);
    EXPECT_EQ(edge.on, MeasurePoint::On::edge);
    EXPECT_NEAR(edge.at.x, 150, 1e-9);
    EXPECT_EQ(measure_point(plan, {250, 150}, 4).on, MeasurePoint::On::nothing);
    EXPECT_EQ(measure_point(plan, {100 + 29 - 1, 150 + 29 - 1}, 1).on, MeasurePoint::On::edge)
        << "a rounded corner is an edge";
}

TEST_F(MeasureTest, other_sheets_end_it) {
    open({{100, 150}});
    desk.window.actions()["place.measure"]->trigger();
    desk.window.actions()["view.board"]->trigger();
    EXPECT_FALSE(canvas.measuring());
    EXPECT_FALSE(desk.window.actions()["place.measure"]->isEnabled());
}

TEST_F(MeasureTest, the_right_button_opens_the_menu_of_what_is_under_it) {
    open({{100, 150}, {163, 150}});
    hand.right_click({100, 150});
    EXPECT_TRUE(popped().contains("place.turn"));
    EXPECT_EQ(desk.window.selection().pockets(), job::Subjects{"i1#1"});
    hand.right_click({320, 60});
    EXPECT_TRUE(popped().contains("edit.paste"));
    std::optional<QPointF> plate;
    for (int y = 0; y < canvas.height() && !plate; y += 4)
        for (int x = 0; x < canvas.width() && !plate; x += 4)
            if (canvas.check_at(QPointF(x, y)) != nullptr) plate = QPointF(x + 2, y + 2);
    ASSERT_TRUE(plate);
    hand.right_click(hand.mm(*plate));
    EXPECT_TRUE(popped().contains("check.mend"));
    EXPECT_TRUE(desk.window.selection().check());
    EXPECT_TRUE(desk.window.actions()["view.to_check"]->isEnabled());
}

TEST_F(MeasureTest, the_menu_key_opens_the_menu_of_what_is_chosen) {
    open({{100, 150}});
    desk.window.selection().choose_pockets({"i1#1"});
    QContextMenuEvent key(QContextMenuEvent::Keyboard, {0, 0}, {0, 0});
    QApplication::sendEvent(&canvas, &key);
    EXPECT_TRUE(popped().contains("place.turn"));
    desk.window.selection().choose_pockets({});
    QApplication::sendEvent(&canvas, &key);
    EXPECT_TRUE(popped().contains("edit.paste"));
}

TEST_F(MeasureTest, so_does_shift_f10) {
    open({{100, 150}});
    desk.window.selection().choose_pockets({"i1#1"});
    MenuKey keys;
    QApplication::instance()->installEventFilter(&keys);
    canvas.setFocus();
    QTest::keyClick(&canvas, Qt::Key_F10);
    EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
    QTest::keyClick(&canvas, Qt::Key_F10, Qt::ShiftModifier);
    EXPECT_TRUE(popped().contains("place.turn"));
}

TEST_F(MeasureTest, equal_walls_are_shown_with_their_figures) {
    open({{60, 150}, {200, 150}, {340, 150}});
    document.commit("move", job::moved(document.job(), {"i1#2"}, {25, 0}));
    desk.preferences.set_snapping(true);
    layout::SnapIn in;
    in.moving = {{172, 121}, {230, 179}};
    in.neighbors = {{box("i1#1"), 0}, {box("i1#3"), 0}};
    in.insert = document.plan().drawers.front().insert->box;
    in.radius_mm = 4;
    const auto snap = layout::snapped(in);
    ASSERT_TRUE(snap.x);
    ASSERT_EQ(snap.x->reason, layout::SnapReason::equal_walls);
    ASSERT_EQ(snap.x->walls.size(), 2U);
    const auto width = [](const auto& wall) { return shape::length(wall.second - wall.first); };
    EXPECT_NEAR(width(snap.x->walls[0]), width(snap.x->walls[1]), 1e-9);
    EXPECT_NEAR(snap.x->walls[0].first.x, box("i1#1").max.x, 1e-9);
    EXPECT_NEAR(snap.x->walls[1].second.x, box("i1#3").min.x, 1e-9);
    hand.press({225, 150});
    hand.drag_on({225, 150}, {202, 151});
    hand.release({202, 151});
    EXPECT_NEAR(box("i1#2").min.x - box("i1#1").max.x, box("i1#3").min.x - box("i1#2").max.x, 1e-5);
}

} // namespace
} // namespace drawercast::app
