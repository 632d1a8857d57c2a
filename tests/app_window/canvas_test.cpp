// SPDX-License-Identifier: GPL-3.0-or-later
// Arranging by mouse and keys on the drawer plan.
#include "job/edit.h"

#include "app_window/hand.h"
#include "document/dragged.h"
#include "sheets/check_words.h"

#include <QDragEnterEvent>
#include <QMimeData>
#include <gtest/gtest.h>

#include <algorithm>

namespace drawercast::app {
namespace {

using shape::Vec;
using test::Desktop;
using test::Hand;
using Subjects = std::vector<std::string>;

struct CanvasTest : testing::Test {
    Desktop desk;
    Hand hand{desk};
    Document& document = desk.window.document();
    Selection& selection = desk.window.selection();
    SheetCanvas& canvas = desk.window.sheets().canvas();

    void open(const std::vector<Vec>& at) { test::open_pockets(desk, at); }
    Vec at(const std::string& subject) { return test::pocket(desk, subject)->pose.at; }
    double turn(const std::string& subject) { return test::pocket(desk, subject)->pose.turn_deg; }
    const std::vector<job::Notch>& notches(const std::string& subject) {
        return job::find_pocket(document.job(), subject).pocket->notches;
    }
};

TEST_F(CanvasTest, focus_loss_puts_a_drag_back) {
    open({{100, 150}});
    const auto before = document.job();
    hand.press({100, 150});
    hand.drag_on({100, 150}, {180, 200});
    ASSERT_FALSE(document.shown() == before);
    QFocusEvent away(QEvent::FocusOut, Qt::OtherFocusReason);
    QApplication::sendEvent(&canvas, &away);
    EXPECT_EQ(document.shown(), before);
    hand.release({180, 200});
    EXPECT_EQ(document.job(), before);
}

TEST_F(CanvasTest, the_right_button_puts_a_drag_back) {
    open({{100, 150}});
    const auto before = document.job();
    hand.press({100, 150});
    hand.drag_on({100, 150}, {180, 200});
    hand.right_click({180, 200});
    EXPECT_EQ(document.shown(), before);
    hand.release({180, 200});
    EXPECT_EQ(document.job(), before);
    EXPECT_EQ(document.undo_stack().count(), 0);
}

TEST_F(CanvasTest, control_frees_a_drag_at_once_and_what_is_shown_is_stored) {
    open({{100, 150}, {220, 150}});
    desk.preferences.set_snapping(true);
    hand.press({100, 150});
    hand.drag_on({100, 150}, {103, 190.3});
    const double px_mm = 1 / canvas.view().px_per_mm();
    hand.move({103, 150 + 3 * px_mm}); // three pixels off the line of centers
    EXPECT_NEAR(document.shown().drawers[0]->pockets[0].pose.at.y, 150, 1e-6) << "in line with the other";
    hand.held = Qt::ControlModifier;
    hand.key_down(Qt::Key_Control);
    EXPECT_NEAR(document.shown().drawers[0]->pockets[0].pose.at.y, 150 + 3 * px_mm, 1e-5);
    const auto shown = document.shown();
    hand.release({103, 150 + 3 * px_mm});
    EXPECT_EQ(document.job(), shown);
}

TEST_F(CanvasTest, the_ring_turns_in_whole_steps_and_freely_with_control) {
    open({{200, 150}});
    hand.click({200, 150});
    desk.preferences.set_snapping(true);
    const Vec ring = hand.mm(hand.px({200, 180}) - QPointF(0, SelectTool::ring_distance_px));
    const double far = ring.y - 150;
    hand.press(ring);
    hand.drag_on(ring, {200 - far, 150 + 4});
    EXPECT_TRUE(document.previewing());
    EXPECT_NEAR(turn("i1#1"), 90, 1e-6) << "a little off a quarter turn, counter-clockwise";
    hand.release({200 - far, 150 + 4});
    EXPECT_NEAR(turn("i1#1"), 90, 1e-6);
    EXPECT_NEAR(at("i1#1").x, 200, 1e-6);
    EXPECT_NEAR(at("i1#1").y, 150, 1e-6);

    hand.held = Qt::ControlModifier;
    hand.drag(ring, {200 - far, 150 + 4});
    EXPECT_GT(std::abs(turn("i1#1") - 180), 0.05);
    EXPECT_NEAR(turn("i1#1"), 180, 10);
    EXPECT_EQ(document.undo_stack().count(), 2);
}

TEST_F(CanvasTest, a_locked_pocket_has_no_ring_and_stays) {
    open({{200, 150}});
    selection.choose_pockets({"i1#1"});
    desk.window.actions()["edit.lock"]->trigger();
    const auto before = document.job();
    const Vec ring = hand.mm(hand.px({200, 180}) - QPointF(0, SelectTool::ring_distance_px));
    hand.drag(ring, {150, 150});
    hand.drag({200, 150}, {150, 100});
    EXPECT_EQ(document.job(), before);
}

TEST_F(CanvasTest, a_box_chooses_what_lies_wholly_inside) {
    open({{80, 150}, {180, 150}, {280, 150}});
    hand.drag({30, 60}, {230, 240});
    EXPECT_EQ(selection.pockets(), (Subjects{"i1#1", "i1#2"}));
    hand.drag({230, 60}, {260, 240});
    EXPECT_EQ(selection.pockets(), Subjects{}) << "only a part of the third";
    hand.click({280, 150});
    hand.held = Qt::ShiftModifier;
    hand.drag({30, 60}, {130, 240});
    EXPECT_EQ(selection.pockets(), (Subjects{"i1#3", "i1#1"})) << "Shift adds";
    hand.click({280, 150});
    EXPECT_EQ(selection.pockets(), Subjects{"i1#1"}) << "and takes away";
}

TEST_F(CanvasTest, escape_during_a_box_gives_back_the_choice) {
    open({{80, 150}, {180, 150}});
    hand.click({80, 150});
    hand.press({130, 60});
    hand.drag_on({130, 60}, {230, 240});
    ASSERT_EQ(selection.pockets(), Subjects{"i1#2"});
    hand.key(Qt::Key_Escape);
    EXPECT_EQ(selection.pockets(), Subjects{"i1#1"});
}

TEST_F(CanvasTest, arrows_nudge_and_nudges_join) {
    open({{80, 150}});
    hand.click({80, 150});
    for (int i = 0; i < 3; ++i) hand.key(Qt::Key_Right);
    hand.held = Qt::ShiftModifier;
    hand.key(Qt::Key_Up);
    EXPECT_NEAR(at("i1#1").x, 83, 1e-9);
    EXPECT_NEAR(at("i1#1").y, 150.1, 1e-9);
    EXPECT_EQ(document.undo_stack().count(), 1) << "one act: within a second, of the same pockets";
}

TEST_F(CanvasTest, a_nudge_there_and_back_again_is_no_step) {
    open({{80, 150}});
    hand.click({80, 150});
    hand.key(Qt::Key_Right);
    hand.key(Qt::Key_Left);
    EXPECT_EQ(document.undo_stack().count(), 0);
    EXPECT_NEAR(at("i1#1").x, 80, 1e-9);
}

TEST_F(CanvasTest, a_notch_slides_along_the_edge_by_mouse) {
    open({{200, 150}});
    desk.preferences.set_snapping(true);
    hand.click({200, 150});
    hand.hover({200, 118}); // at the front
    desk.window.actions()["place.notch"]->trigger();
    ASSERT_EQ(notches("i1#1").size(), 1U);
    ASSERT_EQ(selection.notch(), std::optional<std::size_t>(0));
    const auto first = notches("i1#1").front().pose;
    EXPECT_NEAR(first.at.y, -29, 0.01) << "on the front edge: 60 mm less a fit of one millimeter a side";

    hand.press({200, 115});
    hand.drag_on({200, 115}, {234, 144}); // round the corner to the right
    EXPECT_NEAR(document.shown().drawers[0]->pockets[0].pose.at.x, 200, 1e-9) << "the pocket stands";
    const auto shown = document.shown();
    hand.release({234, 144});
    EXPECT_EQ(document.job(), shown);
    EXPECT_NEAR(notches("i1#1").front().pose.at.x, 29, 0.01);
    EXPECT_NEAR(notches("i1#1").front().pose.at.y, 0, 0.01) << "snapped to the middle of the side";
    EXPECT_NEAR(notches("i1#1").front().pose.turn_deg, first.turn_deg + 90, 1e-6);
    EXPECT_EQ(document.undo_stack().count(), 2);
}

TEST_F(CanvasTest, escape_during_a_slide_gives_the_notch_back) {
    open({{200, 150}});
    hand.click({200, 150});
    desk.window.actions()["place.notch"]->trigger();
    const auto before = document.job();
    hand.press({200, 115});
    hand.drag_on({200, 115}, {215, 115});
    ASSERT_FALSE(document.shown() == before);
    hand.key(Qt::Key_Escape);
    EXPECT_EQ(document.shown(), before);
}

TEST_F(CanvasTest, arrows_slide_a_chosen_notch_and_delete_takes_it_alone) {
    open({{200, 150}});
    hand.click({200, 150});
    desk.window.actions()["place.notch"]->trigger();
    const auto first = notches("i1#1").front().pose.at;
    hand.key(Qt::Key_Right);
    EXPECT_NEAR(notches("i1#1").front().pose.at.x, first.x + 1, 1e-6);
    EXPECT_NEAR(notches("i1#1").front().pose.at.y, first.y, 1e-6);
    hand.key(Qt::Key_Up); // into the pocket: not along the edge
    EXPECT_NEAR(notches("i1#1").front().pose.at.x, first.x + 1, 1e-6);
    desk.window.actions()["edit.delete"]->trigger();
    ASSERT_NE(test::pocket(desk, "i1#1"), nullptr) << "the pocket stays";
    EXPECT_TRUE(notches("i1#1").empty());
    EXPECT_FALSE(selection.notch());
}

TEST_F(CanvasTest, notch_sizes_are_asked_for) {
    open({{200, 150}});
    selection.choose_pockets({"i1#1"});
    desk.window.actions()["place.notch"]->trigger();
    desk.asking.to_notch = [](const job::Notch& given) {
        auto notch = given;
        notch.depth_mm = 12;
        notch.outline = shape::Capsule{40, 20};
        return std::optional(notch);
    };
    desk.window.actions()["place.notch_sizes"]->trigger();
    EXPECT_EQ(notches("i1#1").front().depth_mm, 12);
    document.undo_stack().undo();
    EXPECT_NE(notches("i1#1").front().depth_mm, 12);
    document.undo_stack().undo();
    EXPECT_TRUE(notches("i1#1").empty());
    EXPECT_FALSE(selection.notch()) << "it is gone";
}

void drag_over(SheetCanvas& canvas, QDropEvent& event) { QApplication::sendEvent(&canvas, &event); }

TEST_F(CanvasTest, an_object_from_the_list_moves_as_a_pocket_does_and_is_placed_as_shown) {
    open({{100, 150}});
    desk.preferences.set_snapping(true);
    const auto before = document.job();
    QMimeData data;
    data.setData(dragged_object, "i1");
    const auto at_px = [&](Vec mm) { return hand.px(mm).toPoint(); };
    QDragEnterEvent enter(at_px({300, 150}), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    drag_over(canvas, enter);
    EXPECT_TRUE(enter.isAccepted());
    EXPECT_TRUE(document.previewing());
    QDragLeaveEvent leave;
    QApplication::sendEvent(&canvas, &leave);
    EXPECT_EQ(document.shown(), before);

    drag_over(canvas, enter);
    const QPoint near_line = at_px({300, 150}) + QPoint(0, 3);
    QDragMoveEvent over(near_line, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    drag_over(canvas, over);
    EXPECT_NEAR(at("i1#2").y, 150, 1e-6) << "in line with the first";
    const auto shown = document.shown();
    QDropEvent drop(near_line, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    drag_over(canvas, drop);
    EXPECT_EQ(document.job(), shown);
    EXPECT_EQ(selection.pockets(), Subjects{"i1#2"});
    EXPECT_EQ(document.undo_stack().count(), 1);
}

TEST_F(CanvasTest, the_wheel_zooms_about_the_pointer_and_pans_with_shift) {
    open({{100, 150}});
    const QPointF px(300, 200);
    const Vec under = hand.mm(px);
    const double before = canvas.view().px_per_mm();
    hand.wheel(px, {0, 120});
    EXPECT_GT(canvas.view().px_per_mm(), before * 1.1);
    EXPECT_NEAR(hand.mm(px).x, under.x, 1e-6);
    EXPECT_NEAR(hand.mm(px).y, under.y, 1e-6);
    hand.wheel(px, {0, -120});
    EXPECT_NEAR(canvas.view().px_per_mm(), before, 1e-9);
    hand.held = Qt::ShiftModifier;
    hand.wheel(px, {0, 120});
    EXPECT_LT(hand.mm(px).x, under.x - 1);
    EXPECT_NEAR(hand.mm(px).y, under.y, 1e-6);
    hand.held = Qt::ShiftModifier | Qt::ControlModifier;
    hand.wheel(px, {0, 120});
    EXPECT_GT(hand.mm(px).y, under.y + 1);
    EXPECT_NEAR(canvas.view().px_per_mm(), before, 1e-9);
}

TEST_F(CanvasTest, a_click_on_a_checks_plate_chooses_the_check) {
    open({{100, 150}, {163, 150}});
    const auto& checks = document.plan().drawers.front().checks;
    const auto wall = std::find_if(checks.begin(), checks.end(), [](const layout::Check& check) {
        return check.code == layout::Code::wall_thin;
    });
    ASSERT_NE(wall, checks.end());
    std::optional<QPointF> plate;
    for (int y = 0; y < canvas.height() && !plate; y += 4)
        for (int x = 0; x < canvas.width() && !plate; x += 4)
            if (const auto* check = canvas.check_at(QPointF(x, y)); check != nullptr && *check == *wall)
                plate = QPointF(x, y);
    ASSERT_TRUE(plate) << "it stands on the sheet";
    hand.click(hand.mm(*plate + QPointF(2, 2)));
    ASSERT_TRUE(selection.check());
    EXPECT_EQ(sheets::key_of(*selection.check()), sheets::key_of(*wall));
    EXPECT_EQ(document.undo_stack().count(), 0);
}

TEST_F(CanvasTest, gestures_undone_fully_are_the_start) {
    open({{80, 150}, {200, 150}});
    const auto start = document.job();
    hand.drag({80, 150}, {90, 90});
    hand.click({200, 150});
    const Vec ring = hand.mm(hand.px({200, 180}) - QPointF(0, SelectTool::ring_distance_px));
    hand.drag(ring, {260, 200});
    desk.window.actions()["place.notch"]->trigger();
    hand.key(Qt::Key_Left);
    hand.key(Qt::Key_Escape);
    hand.click({90, 90});
    hand.key(Qt::Key_Up);
    EXPECT_GE(document.undo_stack().count(), 5);
    const auto end = document.job();
    while (document.undo_stack().canUndo()) document.undo_stack().undo();
    EXPECT_EQ(document.job(), start);
    while (document.undo_stack().canRedo()) document.undo_stack().redo();
    EXPECT_EQ(document.job(), end);
}

} // namespace
} // namespace drawercast::app
