// SPDX-License-Identifier: GPL-3.0-or-later
// What a screen reader is told, and what pointing at a button tells.
#include "job/edit.h"

#include "app_window/hand.h"
#include "language/spoken.h"

#include <QAccessible>
#include <QComboBox>
#include <QFileDialog>
#include <QHeaderView>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QTabBar>
#include <QTemporaryDir>
#include <QTimer>
#include <QToolButton>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

using test::Desktop;

bool takes_input(const QWidget* widget) {
    if (qobject_cast<const QScrollBar*>(widget) != nullptr) return false; // its view is named
    if (widget->isHidden() || widget->inherits("QComboBoxListView") ||
        widget->inherits("QLineEditIconButton"))
        return false; // not there now; parts of Qt's own fields
    if (widget->objectName().startsWith("qt_") || qobject_cast<const QHeaderView*>(widget)) return false;
    if (qobject_cast<const QTabBar*>(widget->parentWidget()) != nullptr) return false; // scroll buttons
    if (widget->parentWidget() != nullptr && widget->parentWidget()->inherits("QTableView"))
        return false; // corner button
    return widget->focusPolicy() != Qt::NoFocus || qobject_cast<const QAbstractButton*>(widget) != nullptr;
}

QString name_of(QWidget* widget) {
    auto* spoken = QAccessible::queryAccessibleInterface(widget);
    return spoken == nullptr ? QString() : spoken->text(QAccessible::Name);
}

TEST(Reader, every_control_of_the_window_has_a_name) {
    Desktop desk;
    desk.open_demo();
    int controls = 0;
    for (auto* widget : desk.window.findChildren<QWidget*>()) {
        if (!takes_input(widget) || qobject_cast<QMenu*>(widget) != nullptr) continue;
        ++controls;
        EXPECT_FALSE(name_of(widget).isEmpty()) << widget->metaObject()->className() << " in "
                                                << widget->parentWidget()->metaObject()->className();
    }
    EXPECT_GT(controls, 40);
}

TEST(Reader, an_empty_drawer_says_what_can_be_done_and_a_full_one_what_is_chosen) {
    Desktop desk;
    test::open_pockets(desk, {{100, 150}});
    auto& canvas = desk.window.sheets().canvas();
    job::Drawer empty = *desk.window.document().job().drawers.front();
    empty.id = "d2";
    empty.pockets.clear();
    desk.window.document().commit("add", job::with_drawer(desk.window.document().job(), empty));
    EXPECT_EQ(canvas.accessibleDescription(), QString());
    desk.window.selection().choose_drawer("d2");
    EXPECT_TRUE(canvas.accessibleDescription().startsWith("Nothing in this drawer yet"));
    desk.window.selection().choose_drawer("d1");
    EXPECT_EQ(canvas.accessibleDescription(), QString());
    desk.window.selection().choose_pockets({"i1#1"});
    EXPECT_TRUE(canvas.accessibleDescription().contains("zone"));
}

/// Looks at each dialog as it opens, then closes it without taking anything.
class DialogWatch final : public QObject {
  public:
    DialogWatch() {
        connect(&timer_, &QTimer::timeout, this, [this] { look(); });
        timer_.start(0);
    }
    QStringList seen;
    int controls = 0;

  private:
    void look() {
        if (auto* popup = QApplication::activePopupWidget()) popup->close();
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (dialog == nullptr || !dialog->isVisible()) return;
        if (qobject_cast<QFileDialog*>(dialog) == nullptr) { // the desktop's own
            seen << dialog->windowTitle();
            for (auto* widget : dialog->findChildren<QWidget*>()) {
                if (!takes_input(widget) || qobject_cast<QMenu*>(widget) != nullptr) continue;
                ++controls;
                EXPECT_FALSE(name_of(widget).isEmpty())
                    << widget->metaObject()->className() << " in " << dialog->windowTitle().toStdString();
            }
        }
        dialog->reject();
    }
    QTimer timer_;
};

TEST(Reader, every_control_of_every_dialog_has_a_name) {
    ASSERT_TRUE(Desktop::ready());
    QTemporaryDir folder;
    Preferences preferences(folder.filePath("settings.ini"));
    MainWindow window(preferences, folder.filePath("unsaved")); // asks by its own dialogs
    window.show();
    window.document().replace(job::new_job({400, 300, 90, 60}), {}, true);
    job::Object object;
    object.id = "i1";
    object.name = "Sensor";
    object.height_mm = 30;
    object.levels = {{job::Sunk{shape::Rectangle{60, 40, 4}, 25}, {}, {}}};
    auto job = job::with_object(window.document().job(), object);
    const std::string drawer = job.drawers.front()->id;
    window.document().replace(job::placed(std::move(job), drawer, "i1", {{150, 100}, 0}), {}, true);
    window.selection().choose_pockets(
        {job::subject_of(window.document().job().drawers.front()->pockets.front())});
    DialogWatch watch;
    for (auto* action : window.actions().all()) {
        const QString id = action->objectName();
        if (id == "job.quit" || id == "edit.delete" || id == "edit.cut" || id == "objects.delete" ||
            id.startsWith("job.demo") || id == "drawers.delete")
            continue;
        action->trigger();
        QApplication::processEvents();
    }
    watch.seen.removeDuplicates();
    EXPECT_GT(watch.seen.size(), 12) << watch.seen.join(", ").toStdString();
    EXPECT_GT(watch.controls, 120);
}

TEST(Reader, enter_presses_the_button_it_is_on) {
    Desktop desk;
    desk.open_demo();
    auto* button = new QPushButton("try", desk.window.centralWidget());
    int pressed = 0;
    QObject::connect(button, &QPushButton::clicked, [&] { ++pressed; });
    button->show();
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Return);
    EXPECT_EQ(pressed, 1);
    QTest::keyClick(button, Qt::Key_Enter);
    EXPECT_EQ(pressed, 2);
    QTest::keyClick(button, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(pressed, 2) << "the place command's keys stay its own";
}

TEST(Reader, every_pocket_is_an_item_with_name_place_and_state) {
    Desktop desk;
    desk.open_demo();
    auto& canvas = desk.window.sheets().canvas();
    auto* sheet = QAccessible::queryAccessibleInterface(&canvas);
    ASSERT_NE(sheet, nullptr);
    const auto plan = desk.window.document().plan().drawers.front(); // as it was
    ASSERT_EQ(sheet->childCount(), static_cast<int>(plan.pockets.size()));
    EXPECT_EQ(sheet->text(QAccessible::Name), "Drawer plan");
    const auto subject = plan.pockets[2]->subject;
    desk.window.document().commit("lock", job::locked(desk.window.document().job(), {subject}, true));
    desk.window.selection().choose_pockets({subject});
    for (int i = 0; i < sheet->childCount(); ++i) {
        auto* one = sheet->child(i);
        ASSERT_TRUE(one != nullptr && one->isValid());
        EXPECT_TRUE(one->text(QAccessible::Name).contains("deep, zone"));
        EXPECT_EQ(one->parent(), sheet);
        EXPECT_EQ(sheet->indexOfChild(one), i);
        EXPECT_EQ(one->state().selected, i == 2);
        EXPECT_EQ(one->text(QAccessible::Name).endsWith("locked"), i == 2);
        const QPoint middle = canvas.mapToGlobal(
            canvas.view().to_px(plan.pockets[static_cast<std::size_t>(i)]->box.center()).toPoint());
        EXPECT_TRUE(one->rect().contains(middle));
    }
    auto* gone = sheet->child(2);
    desk.window.document().commit("delete", job::removed(desk.window.document().job(), {subject}));
    EXPECT_FALSE(gone->isValid());
    desk.window.sheets().show_sheet(SheetId::pattern_board);
    EXPECT_EQ(sheet->childCount(), 0) << "blocks are not handled";
}

/// Qt calls a key of both ambiguous and does neither.
TEST(Reader, no_key_of_an_action_opens_a_menu) {
    for (const auto spoken : {language::Language::english, language::Language::german}) {
        const language::Spoken held(spoken);
        Desktop desk;
        QList<QKeySequence> menus;
        for (const auto* menu : desk.window.menuBar()->actions()) {
            menus << QKeySequence::mnemonic(menu->text());
            EXPECT_FALSE(menus.back().isEmpty()) << menu->text().toStdString();
            EXPECT_EQ(menus.count(menus.back()), 1) << menu->text().toStdString();
        }
        EXPECT_EQ(menus.size(), 9);
        for (const auto* action : desk.window.findChildren<QAction*>())
            for (const auto& key : action->shortcuts())
                EXPECT_FALSE(menus.contains(key)) << action->text().toStdString();
    }
}

TEST(Reader, buttons_tell_their_keys) {
    Desktop desk;
    int told = 0;
    for (auto* button : desk.window.findChildren<QToolButton*>()) {
        const auto* action = button->defaultAction();
        if (action == nullptr || action->shortcut().isEmpty()) continue;
        EXPECT_TRUE(button->toolTip().contains(action->shortcut().toString(QKeySequence::NativeText)))
            << button->toolTip().toStdString();
        ++told;
    }
    EXPECT_GT(told, 15);
}

} // namespace
} // namespace drawercast::app
