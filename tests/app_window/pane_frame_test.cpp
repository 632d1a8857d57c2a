// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit.h"

#include "app_window/scripted.h"
#include "panes/badge.h"
#include "window/appearance.h"
#include "window/pane_frame.h"

#include <QTabBar>
#include <QTest>
#include <QToolTip>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

struct Frame {
    Frame() {
        frame.resize(1366, 700);
        frame.show();
        QApplication::processEvents();
    }
    bool application_first = test::Desktop::ready();
    QWidget* left = new QWidget;
    QWidget* middle = new QWidget;
    QWidget* right = new QWidget;
    QWidget* rail = new QWidget;
    PaneFrame frame{left, middle, right, rail};
};

TEST(PaneFrame, folds_the_right_pane_in_a_narrow_window_and_opens_it_over_the_sheet) {
    Frame f;
    EXPECT_FALSE(f.frame.narrow());
    EXPECT_TRUE(f.right->isVisible());
    EXPECT_FALSE(f.rail->isVisible());
    f.frame.resize(1100, 700);
    EXPECT_TRUE(f.frame.narrow());
    EXPECT_FALSE(f.right->isVisible());
    EXPECT_TRUE(f.rail->isVisible());
    const int middle = f.middle->width();
    f.frame.show_right(true);
    EXPECT_TRUE(f.right->isVisible());
    EXPECT_EQ(f.middle->width(), middle) << "it lies over the sheet, which stays as it was";
    EXPECT_EQ(f.right->geometry().right() + 1, f.rail->geometry().left());
    f.frame.show_right(false);
    EXPECT_FALSE(f.right->isVisible());
    f.frame.resize(1366, 700);
    EXPECT_TRUE(f.right->isVisible()) << "as it was before the window got narrow";
    EXPECT_FALSE(f.rail->isVisible());
}

TEST(PaneFrame, work_on_the_sheet_folds_the_pane_again) {
    Frame f;
    f.frame.resize(1100, 700);
    f.middle->setFocusPolicy(Qt::StrongFocus);
    f.frame.activateWindow();
    f.frame.show_right(true);
    f.middle->setFocus();
    QApplication::processEvents();
    EXPECT_FALSE(f.frame.right_shown());
}

TEST(PaneFrame, keeps_its_state_and_takes_no_nonsense) {
    QByteArray state;
    {
        Frame f;
        f.frame.restore("300 410 1 1");
        EXPECT_EQ(f.left->width(), 300);
        EXPECT_EQ(f.right->width(), 410);
        f.frame.show_left(false);
        state = f.frame.state();
    }
    Frame g;
    g.frame.restore(state);
    EXPECT_FALSE(g.left->isVisible());
    EXPECT_EQ(g.right->width(), 410);
    for (const char* nonsense : {"", "1 2 3", "a b c d", "-5 99999 1 1"}) {
        Frame f;
        f.frame.restore(nonsense);
        EXPECT_TRUE(f.left->isVisible()) << nonsense;
        EXPECT_GE(f.left->width(), 150) << nonsense;
        EXPECT_LE(f.right->width(), 900) << nonsense;
    }
}

TEST(Window, panes_are_as_they_were_the_next_time) {
    test::application();
    QTemporaryDir folder;
    for (const bool first : {true, false}) {
        Preferences preferences(folder.filePath("settings.ini"));
        test::Scripted asking(folder.path());
        MainWindow window(preferences, folder.filePath("unsaved"), &asking);
        window.resize(1400, 800);
        window.show();
        EXPECT_EQ(window.actions()["view.left_pane"]->isChecked(), first);
        if (first) window.actions()["view.left_pane"]->trigger();
        EXPECT_TRUE(window.close());
    }
}

TEST(Window, the_tab_of_the_plan_counts_what_is_to_mend) {
    test::Desktop desk;
    desk.open_demo();
    auto* tabs = desk.window.findChild<QTabBar*>();
    ASSERT_NE(tabs, nullptr);
    EXPECT_EQ(tabs->tabButton(0, QTabBar::RightSide), nullptr);
    auto& document = desk.window.document();
    const auto subject = job::subject_of(document.job().drawers.front()->pockets[0]);
    document.commit("away", job::moved(document.job(), {subject}, {-400, 0}));
    const auto* badge = qobject_cast<Badge*>(tabs->tabButton(0, QTabBar::RightSide));
    ASSERT_NE(badge, nullptr);
    EXPECT_GT(badge->count(), 0);
    document.undo_stack().undo();
    EXPECT_EQ(tabs->tabButton(0, QTabBar::RightSide), nullptr);
}

TEST(Window, hints_wear_the_theme) {
    test::application();
    wear(theme::dark_theme(), 1);
    EXPECT_EQ(QToolTip::palette().color(QPalette::ToolTipText), theme::dark_theme().ink);
    EXPECT_EQ(QApplication::font().hintingPreference(), QFont::PreferVerticalHinting);
    wear(theme::light_theme(), 1);
    EXPECT_EQ(QToolTip::palette().color(QPalette::ToolTipText), theme::light_theme().ink);
}

/// 1366 × 768 at twice the scale, less the desktop's own bars.
TEST(Window, fits_a_small_screen) {
    test::Desktop desk;
    const auto fits = [&] {
        const QSize least = desk.window.minimumSizeHint();
        EXPECT_LE(least.width(), 683);
        EXPECT_LE(least.height(), 360);
    };
    fits();
    desk.open_demo();
    const auto& pockets = desk.window.document().job().drawers.front()->pockets;
    desk.window.selection().choose_pockets({job::subject_of(pockets.front())});
    QTest::qWait(200);
    fits();
    desk.window.resize(683, 360);
    QTest::qWait(50);
    EXPECT_EQ(desk.window.size(), QSize(683, 360));
}

} // namespace
} // namespace drawercast::app
