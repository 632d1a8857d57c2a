// SPDX-License-Identifier: GPL-3.0-or-later
// The whole window, driven as a maker does: by mouse, keys and actions, and answered for by Scripted.
#include "job/edit.h"

#include "app_window/hand.h"
#include "app_window/scripted.h"
#include "panes/checks_model.h"
#include "panes/drawers_model.h"
#include "panes/objects_model.h"
#include "window/appearance.h"

#include <QAbstractItemModelTester>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMouseEvent>
#include <QStatusBar>
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

namespace drawercast::app {
namespace {

using test::Desktop;
using test::open_pockets;

void mouse(QWidget& widget, QEvent::Type type, QPointF at, Qt::MouseButton button, Qt::MouseButtons held) {
    QMouseEvent event(type, at, widget.mapToGlobal(at), button, held, Qt::NoModifier);
    QApplication::sendEvent(&widget, &event);
}

void press(QWidget& w, QPointF at) { mouse(w, QEvent::MouseButtonPress, at, Qt::LeftButton, Qt::LeftButton); }
void move(QWidget& w, QPointF at) { mouse(w, QEvent::MouseMove, at, Qt::NoButton, Qt::LeftButton); }
void release(QWidget& w, QPointF at) {
    mouse(w, QEvent::MouseButtonRelease, at, Qt::LeftButton, Qt::NoButton);
}

void key(QWidget& widget, int which) {
    QKeyEvent down(QEvent::KeyPress, which, Qt::NoModifier), up(QEvent::KeyRelease, which, Qt::NoModifier);
    QApplication::sendEvent(&widget, &down);
    QApplication::sendEvent(&widget, &up);
}

bool has(const Document& document, layout::Code code, const std::string& subject) {
    for (const auto& drawer : document.plan().drawers)
        for (const auto& check : drawer.checks)
            if (check.code == code &&
                std::find(check.subjects.begin(), check.subjects.end(), subject) != check.subjects.end())
                return true;
    return false;
}

/// Two pockets 60 mm apart in an otherwise empty drawer.
void open_two_pockets(Desktop& desk) { open_pockets(desk, {{100, 150}, {220, 150}}); }

/// Every action, the dialogs answered; those that end the program or open what pops up aside.
void trigger_all(Desktop& desk, const std::function<void()>& before_each) {
    for (auto* action : desk.window.actions().all()) {
        if (action->objectName() == "job.quit") continue;
        desk.window.sheets().show_sheet(SheetId::drawer_plan);
        before_each();
        action->trigger();
        QApplication::processEvents();
    }
}

TEST(Window, every_action_has_an_act) {
    Desktop desk;
    for (const auto& spec : action_specs()) EXPECT_TRUE(desk.window.actions().has_act(spec.id)) << spec.id;
}

TEST(Window, no_two_actions_share_a_key) {
    Desktop desk;
    QStringList keys;
    for (const auto* action : desk.window.actions().all())
        for (const auto& one : action->shortcuts()) keys << one.toString();
    const int all = static_cast<int>(keys.size());
    keys.removeDuplicates();
    EXPECT_EQ(keys.size(), all);
}

TEST(Window, every_action_on_no_job) {
    Desktop desk;
    trigger_all(desk, [] {});
    EXPECT_GT(desk.asking.asked, 5) << "new job, open, add a drawer or an object: what needs none is there";
}

TEST(Window, every_action_on_an_empty_drawer) {
    Desktop desk;
    trigger_all(desk, [&] { desk.window.document().replace(job::new_job({}), {}, true); });
    EXPECT_EQ(desk.asking.warned, 0);
}

TEST(Window, every_action_on_the_demo) {
    Desktop desk;
    trigger_all(desk, [&] {
        desk.open_demo();
        const auto& drawer = *desk.window.document().job().drawers.front();
        desk.window.selection().choose_pockets({job::subject_of(drawer.pockets.front())});
    });
    EXPECT_EQ(desk.asking.warned, 0);
}

TEST(Window, the_hint_to_drag_stands_only_where_something_can_be_dragged) {
    Desktop desk;
    const auto* said = desk.window.statusBar()->findChild<QLabel*>();
    auto& document = desk.window.document();
    EXPECT_EQ(said->text(), "Ready.");
    job::Object waits;
    waits.id = waits.name = "waits";
    waits.levels = {job::Level{}};
    document.replace(job::with_object(job::new_job({}), waits), {}, true);
    const QString hint = said->text();
    EXPECT_TRUE(hint.startsWith("Drag objects from the list")) << hint.toStdString();
    desk.window.sheets().show_sheet(SheetId::pressure_plate);
    EXPECT_EQ(said->text(), "") << "nothing is dragged onto the plate";
    desk.window.sheets().show_sheet(SheetId::drawer_plan);
    EXPECT_EQ(said->text(), hint);
    open_two_pockets(desk);
    EXPECT_EQ(said->text(), "") << "all are placed";
}

TEST(Window, the_keys_go_from_the_welcome_page_to_the_sheet_and_stay_where_they_are_after) {
    Desktop desk;
    desk.open_demo();
    QApplication::processEvents();
    EXPECT_EQ(desk.window.focusWidget(), &desk.window.sheets().canvas());
    auto* find = desk.window.findChild<QLineEdit*>();
    ASSERT_NE(find, nullptr);
    find->setFocus();
    desk.window.document().replace(desk.window.document().job(), {}, true); // as from disk
    QApplication::processEvents();
    EXPECT_EQ(desk.window.focusWidget(), find);
}

TEST(Window, drag_until_the_wall_is_thin_and_back) {
    Desktop desk;
    open_two_pockets(desk);
    auto& canvas = desk.window.sheets().canvas();
    auto& document = desk.window.document();
    ASSERT_FALSE(has(document, layout::Code::wall_thin, "i1#1"));
    const auto px = [&](double x) { return canvas.view().to_px(shape::Vec{x, 150}); };
    press(canvas, px(100));
    for (double x = 100; x <= 155; x += 5) move(canvas, px(x));
    EXPECT_TRUE(document.previewing());
    EXPECT_TRUE(has(document, layout::Code::wall_thin, "i1#1")) << "the wall is 5 mm now";
    for (double x = 155; x >= 110; x -= 5) move(canvas, px(x));
    EXPECT_FALSE(has(document, layout::Code::wall_thin, "i1#1"));
    const auto shown = document.shown();
    release(canvas, px(110));
    EXPECT_FALSE(document.previewing());
    EXPECT_EQ(document.job(), shown) << "what was shown is what is stored";
    EXPECT_NEAR(pocket(desk, "i1#1")->pose.at.x, 110, 0.5);
    EXPECT_EQ(document.undo_stack().count(), 1);
}

TEST(Window, escape_during_a_drag_puts_it_back) {
    Desktop desk;
    open_two_pockets(desk);
    auto& canvas = desk.window.sheets().canvas();
    const auto before = desk.window.document().job();
    const auto px = [&](double x) { return canvas.view().to_px(shape::Vec{x, 150}); };
    press(canvas, px(100));
    move(canvas, px(120));
    move(canvas, px(140));
    ASSERT_FALSE(desk.window.document().shown() == before);
    key(canvas, Qt::Key_Escape);
    EXPECT_EQ(desk.window.document().shown(), before);
    release(canvas, px(140));
    EXPECT_EQ(desk.window.document().job(), before);
    EXPECT_EQ(desk.window.document().undo_stack().count(), 0);
}

TEST(Window, undo_to_the_start_is_the_start) {
    Desktop desk;
    desk.open_demo();
    auto& document = desk.window.document();
    const auto start = document.job();
    desk.window.actions()["edit.select_all"]->trigger();
    for (const char* id : {"place.turn", "edit.duplicate", "place.walls_x", "place.align_left", "edit.lock",
                           "edit.unlock", "place.turn_15", "edit.delete", "view.inch"}) {
        desk.window.actions()[id]->trigger();
    }
    EXPECT_GT(document.undo_stack().count(), 3);
    while (document.undo_stack().canUndo()) document.undo_stack().undo();
    EXPECT_EQ(document.job(), start);
    EXPECT_FALSE(document.unsaved());
}

TEST(Window, switching_units_changes_nothing_else) {
    Desktop desk;
    open_two_pockets(desk);
    auto& document = desk.window.document();
    const auto start = document.job();
    for (int i = 0; i < 334; ++i)
        for (const auto units : {job::DisplayUnits::inch, job::DisplayUnits::inch_32, job::DisplayUnits::mm})
            document.commit("units", job::in_units(document.job(), units));
    EXPECT_EQ(document.job(), start);
}

TEST(Window, unsaved_work_asks_and_cancel_stays) {
    Desktop desk;
    desk.open_demo();
    desk.window.selection().choose_pockets(
        {job::subject_of(desk.window.document().job().drawers.front()->pockets.front())});
    desk.window.actions()["edit.duplicate"]->trigger();
    const auto work = desk.window.document().job();
    desk.asking.unsaved = Asking::Unsaved::cancel;
    const int asked = desk.asking.asked;
    EXPECT_FALSE(desk.window.close());
    desk.window.actions()["job.new"]->trigger();
    EXPECT_EQ(desk.asking.asked, asked + 2);
    EXPECT_EQ(desk.window.document().job(), work);
    desk.asking.unsaved = Asking::Unsaved::save;
    EXPECT_TRUE(desk.window.close());
    EXPECT_FALSE(desk.window.document().unsaved());
    Document again;
    ASSERT_TRUE(again.open(desk.window.document().path()).empty());
    EXPECT_EQ(again.job(), work);
}

TEST(Window, a_new_job_shows_where_its_first_object_is_placed) {
    Desktop desk;
    desk.open_demo();
    auto& sheets = desk.window.sheets();
    sheets.show_sheet(SheetId::run_sheet);
    desk.window.actions()["job.new"]->trigger();
    EXPECT_TRUE(desk.window.document().job().objects.empty());
    EXPECT_EQ(sheets.canvas().sheet(), SheetId::drawer_plan);
}

TEST(Window, looks_left_as_is_and_taken_back) {
    Desktop desk;
    open_two_pockets(desk);
    auto& window = desk.window;
    constexpr double closer_mm = 53; // leaves a wall of 9 mm: below what the shop wants, not torn
    window.document().commit("move", job::moved(window.document().job(), {"i1#1"}, {closer_mm, 0}));
    const auto& drawer = window.document().plan().drawers.front();
    const auto look =
        std::find_if(drawer.checks.begin(), drawer.checks.end(),
                     [](const layout::Check& check) { return check.code == layout::Code::wall_thin; });
    ASSERT_NE(look, drawer.checks.end());
    ASSERT_EQ(look->severity, layout::Severity::look);
    const auto start = window.document().job();
    window.selection().choose_check(*look);
    ASSERT_TRUE(window.actions()["check.leave"]->isEnabled());
    window.actions()["check.leave"]->trigger();
    EXPECT_EQ(window.document().job().left_as_is.size(), start.left_as_is.size() + 1);
    ASSERT_TRUE(window.actions()["check.take_back"]->isEnabled());
    window.actions()["check.take_back"]->trigger();
    EXPECT_EQ(window.document().job(), start);
}

TEST(Window, models_keep_their_promises) {
    Desktop desk;
    auto& document = desk.window.document();
    auto& selection = desk.window.selection();
    ChecksModel checks(document, selection);
    ObjectsModel objects(document);
    DrawersModel drawers(document);
    using Mode = QAbstractItemModelTester::FailureReportingMode;
    QAbstractItemModelTester a(&checks, Mode::Fatal), b(&objects, Mode::Fatal), c(&drawers, Mode::Fatal);
    desk.open_demo();
    desk.window.actions()["edit.select_all"]->trigger();
    for (const char* id : {"edit.duplicate", "place.turn", "edit.delete", "edit.undo", "edit.undo",
                           "view.next_drawer", "objects.duplicate", "edit.undo", "view.inch"})
        desk.window.actions()[id]->trigger();
    EXPECT_EQ(objects.rowCount(), static_cast<int>(document.job().objects.size()));
    EXPECT_EQ(drawers.rowCount(), static_cast<int>(document.job().drawers.size()));
    document.replace(job::Job{}, {}, true);
    EXPECT_EQ(objects.rowCount(), 0);
    EXPECT_EQ(checks.rowCount(), static_cast<int>(document.plan().checks.size()));
}

TEST(Window, worn_in_every_theme_and_size) {
    Desktop desk;
    desk.open_demo();
    for (const auto& theme : {theme::light_theme(), theme::dark_theme()})
        for (const double scale : {1.0, 2.0, 3.0}) {
            wear(theme, scale);
            desk.window.set_theme(theme);
            QApplication::processEvents();
            EXPECT_FALSE(desk.window.grab().isNull());
        }
    wear(theme::light_theme(), 1);
}

} // namespace
} // namespace drawercast::app
