// SPDX-License-Identifier: GPL-3.0-or-later
// Arranging by hand beyond dragging, by keys, menus and typed figures.
#include "app_forms/operate.h"
#include "app_window/hand.h"
#include "window/placement_pane.h"

#include <QClipboard>
#include <QLabel>
#include <QMenuBar>

namespace drawercast::app {
namespace {

using job::Subjects;
using shape::Vec;
using test::Desktop;

class HandActsTest : public testing::Test {
  protected:
    Desktop desk;
    Document& document = desk.window.document();
    Selection& selection = desk.window.selection();
    test::Hand hand{desk};

    void open(const std::vector<Vec>& at) { test::open_pockets(desk, at); }
    Vec at(const std::string& subject) { return test::pocket(desk, subject)->pose.at; }
    shape::Box box(const std::string& subject) { return test::pocket(desk, subject)->box; }
    void shortcut(const QKeySequence& keys) { test::press_shortcut(desk, keys); }
    void add_second_object() {
        job::Object object;
        object.id = "i2";
        object.name = "Long probe";
        object.height_mm = 20;
        object.fit_mm = -1;
        object.levels = {{job::Sunk{shape::Rectangle{120, 30, 0}, 15}, {}, {}}};
        document.replace(job::with_object(document.job(), object), {}, true);
        QApplication::processEvents();
    }
};

TEST_F(HandActsTest, two_pockets_change_places_by_a_key) {
    open({{80, 100}, {250, 180}});
    hand.click({80, 100});
    hand.held = Qt::ShiftModifier;
    hand.click({250, 180});
    ASSERT_EQ(selection.pockets().size(), 2U);
    const auto before = document.job();
    shortcut(Qt::Key_X);
    EXPECT_EQ(at("i1#1"), (Vec{250, 180}));
    EXPECT_EQ(at("i1#2"), (Vec{80, 100}));
    EXPECT_EQ(document.undo_stack().count(), 1);
    shortcut(Qt::Key_X);
    EXPECT_EQ(document.job(), before) << "twice is as it was";
    document.undo_stack().undo();
    document.undo_stack().undo();
    EXPECT_EQ(document.job(), before);
    selection.choose_pockets({"i1#1", "i1#2"});
    document.commit("lock", job::locked(document.job(), {"i1#2"}, true));
    EXPECT_FALSE(desk.window.actions()["place.swap"]->isEnabled()) << "a locked one stays";
}

TEST_F(HandActsTest, another_object_takes_the_place_with_its_notch_at_the_same_side) {
    open({{200, 150}});
    add_second_object();
    selection.choose_pockets({"i1#1"});
    document.commit("turn", job::turned(document.job(), {"i1#1"}, 90, {200, 150}));
    desk.window.actions()["place.notch"]->trigger(); // in the middle of the front
    const auto before = document.job();
    selection.choose_pockets({"i1#1"});
    shortcut(QKeySequence("Shift+R"));
    ASSERT_EQ(selection.pockets(), Subjects{"i2#1"});
    const auto found = job::find_pocket(document.job(), "i2#1");
    ASSERT_NE(found.pocket, nullptr);
    EXPECT_EQ(job::find_pocket(document.job(), "i1#1").pocket, nullptr);
    EXPECT_EQ(found.pocket->pose, (shape::Pose{{200, 150}, 90}));
    ASSERT_EQ(found.pocket->notches.size(), 1U);
    const Vec notch = shape::placed(found.pocket->notches[0].pose.at, found.pocket->pose);
    EXPECT_NEAR(notch.x, 200, 1e-5);
    EXPECT_NEAR(notch.y, 150 - 60 + 1, 1e-5) << "on the front edge of the longer pocket, a millimeter tight";
    EXPECT_LE(found.pocket->notches[0].depth_mm, 15) << "no deeper than its pocket";
    document.undo_stack().undo();
    EXPECT_EQ(document.job(), before);
}

TEST_F(HandActsTest, copies_stand_in_rows_with_the_walls_asked) {
    open({{60, 240}});
    selection.choose_pockets({"i1#1"});
    desk.asking.to_copies = [](const CopyOrder& usual) {
        EXPECT_GT(usual.wall_x_mm, 0) << "as the shop wants it";
        return std::optional(CopyOrder{3, 2, 12, 15, false, false});
    };
    shortcut(Qt::Key_R);
    ASSERT_EQ(selection.pockets().size(), 6U);
    EXPECT_NEAR(box("i1#2").min.x - box("i1#1").max.x, 12, 1e-6);
    EXPECT_NEAR(box("i1#1").min.y - box("i1#4").max.y, 15, 1e-6);
    EXPECT_EQ(document.job().objects.front()->count, 6);
    EXPECT_EQ(document.undo_stack().count(), 1);
    document.undo_stack().undo();
    EXPECT_EQ(document.job().drawers.front()->pockets.size(), 1U);
}

TEST_F(HandActsTest, the_long_answer_may_come_while_a_dialog_is_open) {
    open({{60, 240}});
    selection.choose_pockets({"i1#1"});
    desk.asking.to_copies = [this](const CopyOrder&) {
        document.building().wait();
        return std::optional(CopyOrder{2, 1, 12, 15, false, false});
    };
    shortcut(Qt::Key_R);
    ASSERT_TRUE(document.last_built());
    EXPECT_EQ(selection.pockets().size(), 2U);
}

TEST_F(HandActsTest, typed_figures_put_the_choice_there) {
    open({{100, 100}, {250, 200}});
    selection.choose_pockets({"i1#1"});
    shortcut(Qt::Key_P);
    ASSERT_NE(qobject_cast<QLineEdit*>(QApplication::focusWidget()), nullptr) << "the field has the keys";
    test::type(desk.window, "Left edge", "40");
    EXPECT_NEAR(box("i1#1").min.x, 40, 1e-6);
    test::type(desk.window, "Front edge", "3 cm");
    EXPECT_NEAR(box("i1#1").min.y, 30, 1e-6);
    const Vec middle = box("i1#1").center();
    test::type(desk.window, "Turn", "30");
    EXPECT_NEAR(test::pocket(desk, "i1#1")->pose.turn_deg, 30, 1e-9);
    EXPECT_NEAR(box("i1#1").center().x, middle.x, 1e-5);
    EXPECT_EQ(document.undo_stack().count(), 3);
    QTest::keyClick(&test::field(desk.window, "Turn"), Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), &desk.window.sheets().canvas());
    EXPECT_EQ(document.undo_stack().count(), 3) << "nothing else was typed";

    selection.choose_pockets({"i1#1", "i1#2"});
    const Vec apart = at("i1#2") - at("i1#1");
    test::type(desk.window, "Left edge", "50");
    EXPECT_NEAR(std::min(box("i1#1").min.x, box("i1#2").min.x), 50, 1e-6);
    EXPECT_NEAR((at("i1#2") - at("i1#1")).x, apart.x, 1e-5) << "several move as one";
    while (document.undo_stack().canUndo()) document.undo_stack().undo();
    EXPECT_EQ(at("i1#1"), (Vec{100, 100}));
}

TEST_F(HandActsTest, escape_and_nonsense_leave_the_place_alone) {
    open({{100, 100}});
    selection.choose_pockets({"i1#1"});
    const auto before = document.job();
    auto& field = test::field(desk.window, "Left edge");
    field.setFocus();
    QTest::keyClicks(&field, "9");
    QTest::keyClick(&field, Qt::Key_Escape);
    QTest::keyClick(&field, Qt::Key_Tab);
    EXPECT_EQ(document.job(), before);
    field.setFocus();
    QTest::keyClick(&field, Qt::Key_Escape);
    EXPECT_EQ(QApplication::focusWidget(), &desk.window.sheets().canvas())
        << "the keys are the sheet's again";
    test::type(desk.window, "Left edge", "1.5,0.0"); // whichever mark decimals have
    EXPECT_EQ(document.job(), before);
    document.commit("lock", job::locked(document.job(), {"i1#1"}, true));
    EXPECT_FALSE(test::field(desk.window, "Left edge").isEnabled());
}

TEST_F(HandActsTest, the_fields_follow_units_and_moves) {
    open({{100, 100}});
    selection.choose_pockets({"i1#1"});
    const auto shown = [&](const char* name) {
        return QLocale().toDouble(static_cast<QLineEdit&>(test::field(desk.window, name)).text());
    };
    const double left = box("i1#1").min.x;
    EXPECT_EQ(shown("Left edge"), left);
    desk.window.actions()["view.inch"]->trigger();
    QApplication::processEvents();
    EXPECT_NEAR(shown("Left edge"), left / 25.4, 1e-3);
    desk.window.actions()["view.mm"]->trigger();
    hand.click({100, 100});
    hand.key(Qt::Key_Right);
    EXPECT_NEAR(shown("Left edge"), left + 1, 1e-6);
    EXPECT_EQ(at("i1#1"), (Vec{101, 100})) << "showing it in inches changed nothing";
}

TEST_F(HandActsTest, how_it_holds_is_said_of_one_pocket) {
    open({{100, 100}});
    const auto words = [&] {
        QString all;
        for (auto* label : desk.window.findChild<PlacementPane*>()->findChildren<QLabel*>())
            if (label->isVisible()) all += label->text();
        return all;
    };
    selection.choose_pockets({"i1#1"});
    ASSERT_TRUE(QTest::qWaitFor([&] { return words().contains("fingers"); }, 5000));
    EXPECT_TRUE(words().contains("do not reach"));
    document.commit("notch",
                    job::with_notch(document.job(), "i1#1", {shape::Capsule{60, 28}, {{0, -29}, 0}, 20, {}}));
    EXPECT_TRUE(QTest::qWaitFor([&] { return words().contains("room for 3"); }, 5000));
}

TEST_F(HandActsTest, pockets_are_chosen_by_list) {
    open({{80, 100}, {200, 100}, {320, 100}});
    desk.asking.to_list = [](const std::vector<ListedPocket>& pockets) {
        EXPECT_EQ(pockets.size(), 3U);
        EXPECT_TRUE(pockets[0].words.contains("Sensor"));
        return Subjects{pockets[0].subject, pockets[2].subject};
    };
    shortcut(QKeySequence("Ctrl+Shift+L"));
    EXPECT_EQ(selection.pockets().size(), 2U);
    selection.choose_pockets({});
    selection.choose_object("i1");
    shortcut(QKeySequence("Shift+A"));
    EXPECT_EQ(selection.pockets().size(), 3U);
    EXPECT_EQ(document.undo_stack().count(), 0);
}

TEST_F(HandActsTest, the_list_shows_its_choice_on_the_sheet) {
    open({{80, 100}, {200, 100}});
    add_second_object();
    document.commit("place", job::placed(document.job(), "d1", "i2", {{200, 220}, 0}));
    Subjects seen;
    ChooseDialog dialog(listed_pockets(document.job(), document.plan().drawers.front()), {},
                        [&](const Subjects& now) { seen = now; });
    test::open(dialog);
    test::type(dialog, "Find by name, size or zone", "probe");
    QTest::mouseClick(&test::button(dialog, "All found"), Qt::LeftButton);
    EXPECT_EQ(seen, Subjects{"i2#1"});
    EXPECT_EQ(dialog.chosen(), Subjects{"i2#1"});
}

TEST_F(HandActsTest, pockets_are_copied_into_another_job) {
    open({{80, 100}, {200, 100}});
    selection.choose_pockets({"i1#2"});
    desk.window.actions()["place.notch"]->trigger();
    selection.choose_pockets({"i1#2"});
    shortcut(QKeySequence::Copy);
    shortcut(QKeySequence::Paste);
    EXPECT_EQ(document.job().objects.size(), 1U) << "it is the same object";
    ASSERT_EQ(selection.pockets(), Subjects{"i1#3"});
    EXPECT_NE(at("i1#3"), at("i1#2")) << "not hidden under the first";

    Desktop other;
    other.window.document().replace(job::new_job({}), {}, true);
    QApplication::processEvents();
    other.window.actions()["edit.paste"]->trigger();
    const auto& pasted = other.window.document().job();
    ASSERT_EQ(pasted.objects.size(), 1U);
    EXPECT_EQ(pasted.objects[0]->name, "Sensor");
    ASSERT_EQ(pasted.drawers[0]->pockets.size(), 1U);
    EXPECT_EQ(pasted.drawers[0]->pockets[0].notches.size(), 1U);
    other.window.document().undo_stack().undo();
    EXPECT_TRUE(other.window.document().job().objects.empty());
}

TEST_F(HandActsTest, cut_takes_away_what_is_free_and_paste_brings_it_back) {
    open({{80, 100}, {200, 100}});
    document.commit("lock", job::locked(document.job(), {"i1#1"}, true));
    selection.choose_pockets({"i1#1", "i1#2"});
    shortcut(QKeySequence::Cut);
    EXPECT_EQ(document.job().drawers[0]->pockets.size(), 1U);
    shortcut(QKeySequence::Paste);
    EXPECT_EQ(document.job().drawers[0]->pockets.size(), 3U) << "both were copied";
}

TEST_F(HandActsTest, deleting_leaves_what_is_locked) {
    open({{80, 100}, {200, 100}});
    document.commit("lock", job::locked(document.job(), {"i1#1"}, true));
    selection.choose_pockets({"i1#1", "i1#2"});
    shortcut(QKeySequence::Delete);
    ASSERT_EQ(document.job().drawers[0]->pockets.size(), 1U);
    EXPECT_EQ(document.job().drawers[0]->pockets[0].locked, true);
    selection.choose_pockets({"i1#1"});
    shortcut(QKeySequence::Delete);
    EXPECT_EQ(document.job().drawers[0]->pockets.size(), 1U);
}

TEST_F(HandActsTest, a_list_on_the_clipboard_goes_to_its_form) {
    open({{80, 100}});
    QApplication::clipboard()->setText("Lamp\t100\t50\t30");
    const int asked = desk.asking.asked;
    desk.window.actions()["edit.paste"]->trigger();
    EXPECT_EQ(desk.asking.asked, asked + 1);
    QApplication::clipboard()->setText("nothing of ours");
    desk.window.actions()["edit.paste"]->trigger();
    EXPECT_EQ(desk.asking.asked, asked + 1);
    EXPECT_EQ(document.undo_stack().count(), 0);
}

TEST_F(HandActsTest, to_another_drawer_by_a_key) {
    open({{80, 100}});
    document.commit("drawer", job::with_drawer(document.job(), [&] {
                        auto drawer = *document.job().drawers[0];
                        drawer.id = "d2";
                        drawer.pockets.clear();
                        return drawer;
                    }()));
    selection.choose_pockets({"i1#1"});
    shortcut(QKeySequence("Shift+D"));
    EXPECT_EQ(selection.drawer(), "d2");
    EXPECT_EQ(document.job().drawers[1]->pockets.size(), 1U);
    EXPECT_EQ(selection.pockets(), Subjects{"i1#1"});
    document.undo_stack().undo();
    EXPECT_EQ(document.job().drawers[0]->pockets.size(), 1U);
}

TEST_F(HandActsTest, a_smaller_drawer_takes_them_inside_its_edges) {
    open({{80, 100}, {340, 240}});
    document.commit("drawer", job::with_drawer(document.job(), [&] {
                        auto drawer = *document.job().drawers[0];
                        drawer.id = "d2";
                        drawer.outline = shape::Rectangle{200, 150, 0};
                        drawer.pockets.clear();
                        drawer.obstructions.clear();
                        return drawer;
                    }()));
    selection.choose_pockets({"i1#2"});
    shortcut(QKeySequence("Shift+D"));
    ASSERT_EQ(selection.drawer(), "d2");
    const auto& plan = document.plan().drawers.at(1);
    ASSERT_EQ(plan.pockets.size(), 1U);
    const auto& insert = plan.insert->box;
    const auto& there = plan.pockets.front()->box;
    EXPECT_LT(insert.min.x, there.min.x);
    EXPECT_GT(insert.max.x, there.max.x);
    EXPECT_GT(insert.max.y, there.max.y);
    for (const auto& check : plan.checks) EXPECT_NE(check.severity, layout::Severity::mend);
    document.undo_stack().undo();
    EXPECT_EQ(document.job().drawers[0]->pockets.size(), 2U);
}

} // namespace
} // namespace drawercast::app
