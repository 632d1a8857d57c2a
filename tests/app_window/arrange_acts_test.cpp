// SPDX-License-Identifier: GPL-3.0-or-later
// Arranging by the window: keys, the dialog over it, what is kept and what goes back.
#include "plan/figures.h"

#include "app_window/hand.h"
#include "window/arrange_acts.h"
#include "window/arrange_dialog.h"
#include "window/tidy_acts.h"

#include <QLabel>
#include <QPushButton>
#include <QtTest>
#include <gtest/gtest.h>

#include <algorithm>

namespace drawercast::app {
namespace {

using test::Desktop;

class ArrangeActsTest : public testing::Test {
  protected:
    Desktop desk;
    Document& document = desk.window.document();
    test::Hand hand{desk};

    /// Sixty millimeters square, `count` of them; one stands already where the hand put it.
    void open(int count, shape::Vec at = {200, 150}) {
        test::open_pockets(desk, {at});
        job::Object object = *document.job().objects.front();
        object.count = count;
        document.replace(job::with_object(document.job(), object), {}, true);
        QApplication::processEvents();
    }
    void shortcut(const QKeySequence& keys) { test::press_shortcut(desk, keys); }
    ArrangeDialog* dialog() { return desk.window.findChild<ArrangeDialog*>(); }
    bool over() {
        return QTest::qWaitFor(
            [&] {
                QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
                return dialog() == nullptr;
            },
            60'000);
    }
    std::size_t placed() { return document.job().drawers.front()->pockets.size(); }
};

TEST_F(ArrangeActsTest, what_is_not_placed_finds_its_place_as_one_step_of_undo) {
    open(9);
    const auto before = document.job();
    shortcut(QKeySequence("Ctrl+R"));
    ASSERT_TRUE(over());
    EXPECT_EQ(placed(), 9U);
    EXPECT_FALSE(document.previewing());
    EXPECT_FALSE(plan::anything_to_mend(document.plan()));
    EXPECT_EQ(job::find_pocket(document.job(), "i1#1").pocket->pose, (shape::Pose{{200, 150}, 0}));
    EXPECT_EQ(document.undo_stack().count(), 1);
    EXPECT_FALSE(desk.window.actions()["arrange.unplaced"]->isEnabled()) << "nothing is left to place";
    document.undo_stack().undo();
    EXPECT_EQ(document.job(), before);
}

TEST_F(ArrangeActsTest, escape_keeps_the_best_so_far_and_the_sheet_shows_it_meanwhile) {
    open(60); // more than there is room for: the search goes on until it is stopped
    shortcut(QKeySequence("Ctrl+R"));
    ASSERT_NE(dialog(), nullptr);
    const auto labels = dialog()->findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->text().contains("with walls");
    })) << "why there is no room for all of them";
    ASSERT_TRUE(QTest::qWaitFor([&] { return document.previewing(); }, 60'000));
    EXPECT_EQ(placed(), 1U) << "nothing is committed yet";
    EXPECT_GT(document.shown().drawers.front()->pockets.size(), 1U);
    QTest::keyClick(dialog(), Qt::Key_Escape);
    ASSERT_TRUE(over());
    EXPECT_GT(placed(), 1U);
    EXPECT_LT(placed(), 60U);
    EXPECT_FALSE(plan::anything_to_mend(document.plan()));
    EXPECT_EQ(document.undo_stack().count(), 1);
}

TEST_F(ArrangeActsTest, back_to_what_was_leaves_nothing_behind) {
    open(60);
    const auto before = document.job();
    shortcut(QKeySequence("Ctrl+Shift+R"));
    ASSERT_NE(dialog(), nullptr);
    ASSERT_TRUE(QTest::qWaitFor([&] { return document.previewing(); }, 60'000));
    for (auto* button : dialog()->findChildren<QPushButton*>())
        if (!button->isDefault()) QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_TRUE(over());
    EXPECT_EQ(document.job(), before);
    EXPECT_FALSE(document.previewing());
    EXPECT_EQ(document.undo_stack().count(), 0);
}

TEST_F(ArrangeActsTest, what_stands_in_the_way_moves_where_all_that_is_not_locked_may) {
    test::open_pockets(desk, {{200, 150}, {220, 160}, {100, 100}}); // the first two lie over each other
    document.commit("lock", job::locked(document.job(), {"i1#1", "i1#3"}, true));
    shortcut(QKeySequence("Ctrl+Shift+R"));
    ASSERT_TRUE(over());
    EXPECT_FALSE(plan::anything_to_mend(document.plan()));
    EXPECT_EQ(job::find_pocket(document.job(), "i1#1").pocket->pose.at, (shape::Vec{200, 150}));
    EXPECT_EQ(job::find_pocket(document.job(), "i1#3").pocket->pose.at, (shape::Vec{100, 100}));
    EXPECT_EQ(document.undo_stack().count(), 2);
}

TEST_F(ArrangeActsTest, over_all_drawers_takes_what_one_has_no_room_for) {
    open(30);
    job::Drawer second = *document.job().drawers.front();
    second.id = "d9";
    second.pockets.clear();
    document.replace(job::with_drawer(document.job(), second), {}, true);
    QApplication::processEvents();
    desk.window.actions()["arrange.which"]->trigger();
    ASSERT_NE(dialog(), nullptr);
    QTest::qWait(2000);
    if (dialog() != nullptr) QTest::keyClick(dialog(), Qt::Key_Escape);
    ASSERT_TRUE(over());
    EXPECT_EQ(desk.asking.asked, 1) << "each drawer's answer is offered";
    EXPECT_EQ(document.undo_stack().count(), 1);
    EXPECT_GT(document.job().drawers[0]->pockets.size() + document.job().drawers[1]->pockets.size(), 1U);
}

TEST_F(ArrangeActsTest, says_where_thin_walls_leave_foam_no_way) {
    open(2, {40, 40});
    job::Job job = document.job();
    job::Drawer drawer = *job.drawers.front();
    drawer.outline = shape::Rectangle{150, 90, 0}; // two of 60, edges of 12, a wall of 6 at the most
    job.drawers.front() = drawer;
    job.minimums.wall_mm = 2;
    job.minimums.wall_ratio = 100;
    document.replace(job, {}, true);
    QSignalSpy said(desk.window.findChild<ArrangeActs*>(), &ArrangeActs::said);
    shortcut(QKeySequence("Ctrl+R"));
    ASSERT_TRUE(over());
    EXPECT_EQ(placed(), 2U);
    ASSERT_FALSE(said.isEmpty());
    EXPECT_TRUE(said.last().at(0).toString().endsWith(slot_words(1)))
        << said.last().at(0).toString().toStdString();
}

TEST_F(ArrangeActsTest, a_wish_is_shown_before_it_is_chosen_and_is_one_step) {
    open(1, {80, 80});
    const auto before = document.job();
    shortcut(QKeySequence("Ctrl+Shift+Y"));
    auto* tidy = desk.window.findChild<TidyActs*>();
    ASSERT_NE(tidy, nullptr);
    ASSERT_EQ(tidy->menu().actions().size(), 1) << "one wish would change something";
    QTest::keyClick(&tidy->menu(), Qt::Key_Down);
    EXPECT_TRUE(document.previewing());
    EXPECT_EQ(document.job(), before);
    QTest::keyClick(&tidy->menu(), Qt::Key_Return);
    EXPECT_FALSE(document.previewing());
    EXPECT_NEAR(job::find_pocket(document.job(), "i1#1").pocket->pose.at.x, 200, 0.02);
    document.undo_stack().undo();
    EXPECT_EQ(document.job(), before);
}

TEST_F(ArrangeActsTest, a_window_may_go_while_it_arranges) {
    open(60);
    shortcut(QKeySequence("Ctrl+R"));
    EXPECT_NE(dialog(), nullptr); // and now the window goes, with the search in it
}

} // namespace
} // namespace drawercast::app
