// SPDX-License-Identifier: GPL-3.0-or-later
// Vents by hand on the pressure plate, by the events a mouse and a keyboard send: each act is one step of
// undo, is kept in the job, and the other vents follow it.
#include "job/catalog.h"
#include "job/edit.h"
#include "job/edit_vents.h"

#include "app_window/hand.h"

#include <QAction>
#include <QMenu>
#include <gtest/gtest.h>

#include <algorithm>

namespace drawercast::app {
namespace {

using test::Desktop;
using test::Hand;

constexpr double exact_mm = 1e-5; // places are kept to a millionth, and come through two frames

/// A small drawer with its answer, on the sheet of its plate. The maker chose board and stiffeners, so that
/// no design is searched for.
struct Plate {
    Plate() {
        test::open_with_plate_chosen(desk, {{100, 150}, {220, 150}, {320, 100}});
        answer();
        desk.window.sheets().show_sheet(SheetId::pressure_plate);
        QApplication::processEvents();
    }
    void answer() {
        document().building().wait();
        QApplication::processEvents();
    }
    Document& document() { return desk.window.document(); }
    SheetCanvas& canvas() { return desk.window.sheets().canvas(); }
    QAction& action(const char* id) { return *desk.window.actions()[id]; }
    const job::Drawer& drawer() { return *document().job().drawers.front(); }
    std::vector<job::KeptVent> kept() { return job::kept_vents(drawer()); }
    const std::vector<air::Vent>& vents() { return canvas().air()->vented.vents; }
    /// One the program placed over an air pocket.
    std::size_t over_a_pocket() {
        for (std::size_t i = 0; i < vents().size(); ++i)
            if (vents()[i].why == air::VentFor::air) return i;
        return vents().size();
    }
    bool vent_at(shape::Vec at) {
        return std::any_of(vents().begin(), vents().end(),
                           [&](const air::Vent& vent) { return shape::length(vent.at - at) < exact_mm; });
    }

    Desktop desk;
    Hand hand{desk};
};

TEST(Vents, a_dragged_one_is_locked_where_it_is_put_and_undo_gives_it_back) {
    Plate plate;
    const auto before = plate.document().job();
    const shape::Vec from = plate.vents()[plate.over_a_pocket()].at, to = from + shape::Vec{14.3, -9.8};
    plate.hand.drag(from, to);
    ASSERT_EQ(plate.kept().size(), 1u);
    const shape::Vec put{std::round(to.x), std::round(to.y)}; // whole millimeters from the datum
    EXPECT_TRUE(plate.vent_at(put)) << "shown there before the answer is";
    EXPECT_TRUE(plate.canvas().shows_old());
    plate.answer();
    EXPECT_TRUE(plate.vent_at(put));
    EXPECT_EQ(plate.vents().front().why, air::VentFor::kept);
    EXPECT_TRUE(plate.canvas().vent_chosen());
    const auto text = plate.document().undo_stack().undoText();
    EXPECT_EQ(text, "Move vent");
    plate.action("edit.undo").trigger();
    EXPECT_EQ(plate.document().job(), before);
}

/// The number of a vent pointed at means nothing in another drawer.
TEST(Vents, pointing_at_one_is_forgotten_with_its_drawer) {
    Plate plate;
    job::Drawer small = plate.drawer();
    small.id = "d2";
    small.pockets.clear();
    small.outline = shape::Rectangle{120, 100, 0};
    plate.document().commit("add", job::with_drawer(plate.document().job(), small));
    plate.answer();
    const std::size_t count = plate.vents().size();
    plate.hand.hover(plate.vents().back().at);
    EXPECT_EQ(plate.canvas().cursor().shape(), Qt::SizeAllCursor);
    plate.desk.window.selection().choose_drawer("d2");
    QApplication::processEvents();
    ASSERT_TRUE(plate.canvas().air());
    EXPECT_LT(plate.vents().size(), count);
}

TEST(Vents, the_rest_finds_its_places_around_the_locked_one) {
    Plate plate;
    const std::size_t count = plate.vents().size();
    const std::size_t which = plate.over_a_pocket();
    const shape::Vec from = plate.vents()[which].at;
    const auto shares = plate.canvas().air()->vented.shares_ml;
    plate.hand.drag(from, {from.x, 5}); // out to the front: over no pocket any more
    plate.answer();
    EXPECT_EQ(plate.kept().size(), 1u);
    EXPECT_GE(plate.vents().size(), count) << "another vent came where this one is missed";
    for (const double ml : plate.canvas().air()->vented.shares_ml)
        EXPECT_LE(ml, air::vented_ml + *std::max_element(shares.begin(), shares.end()));
}

TEST(Vents, while_dragging_the_trial_is_shown_and_escape_drops_it) {
    Plate plate;
    const auto before = plate.document().job();
    const auto still = plate.canvas().grab().toImage();
    const shape::Vec from = plate.vents()[plate.over_a_pocket()].at;
    plate.hand.press(from);
    plate.hand.drag_on(from, from + shape::Vec{25, 18});
    EXPECT_NE(plate.canvas().grab().toImage(), still);
    EXPECT_EQ(plate.document().job(), before) << "nothing is stored while the hand moves";
    plate.hand.key(Qt::Key_Escape);
    plate.hand.release(from + shape::Vec{25, 18});
    EXPECT_EQ(plate.document().job(), before);
    EXPECT_FALSE(plate.document().undo_stack().canUndo());
}

TEST(Vents, a_click_chooses_and_moves_nothing) {
    Plate plate;
    const auto before = plate.document().job();
    plate.hand.click(plate.vents().front().at);
    EXPECT_EQ(plate.canvas().vent_chosen(), 0u);
    EXPECT_EQ(plate.document().job(), before);
    plate.hand.click({-5, -5});
    EXPECT_FALSE(plate.canvas().vent_chosen());
}

TEST(Vents, keys_lock_nudge_unlock_and_delete) {
    Plate plate;
    const std::size_t which = plate.over_a_pocket();
    const shape::Vec at = plate.vents()[which].at;
    plate.hand.click(at);
    plate.action("edit.lock").trigger();
    ASSERT_EQ(plate.kept().size(), 1u);
    plate.answer();
    EXPECT_TRUE(plate.action("edit.unlock").isEnabled());
    EXPECT_FALSE(plate.action("edit.lock").isEnabled()) << "it is";
    const int steps = plate.document().undo_stack().count();
    for (int i = 0; i < 3; ++i) plate.hand.key(Qt::Key_Right);
    EXPECT_EQ(plate.document().undo_stack().count(), steps + 1) << "nudges of one vent are one step";
    EXPECT_TRUE(plate.vent_at(at + shape::Vec{3, 0}));
    plate.action("edit.unlock").trigger();
    EXPECT_TRUE(plate.kept().empty());
    EXPECT_FALSE(plate.drawer().vents.has_value()) << "as if nothing had been said of vents";
}

TEST(Vents, one_of_the_programs_deleted_keeps_the_others_as_they_are) {
    Plate plate;
    const auto before = plate.vents();
    const std::size_t which = plate.over_a_pocket();
    plate.hand.click(before[which].at);
    plate.action("edit.delete").trigger();
    EXPECT_FALSE(job::vents_automatic(plate.drawer()));
    EXPECT_EQ(plate.kept().size(), before.size() - 1);
    plate.answer();
    EXPECT_EQ(plate.vents().size(), before.size() - 1);
    EXPECT_FALSE(plate.vent_at(before[which].at));
    EXPECT_FALSE(plate.action("vents.rest").isChecked());
    plate.action("vents.automatic").trigger();
    plate.answer();
    EXPECT_EQ(plate.vents(), before);
}

TEST(Vents, are_added_under_the_pointer_and_by_a_double_click) {
    Plate plate;
    const shape::Vec free{231, 47};
    plate.hand.hover(free);
    plate.action("vents.add").trigger();
    ASSERT_EQ(plate.kept().size(), 1u);
    EXPECT_TRUE(plate.vent_at(free));
    EXPECT_TRUE(plate.canvas().vent_chosen());
    plate.answer();
    const QPointF px = plate.hand.px({60, 140});
    QMouseEvent twice(QEvent::MouseButtonDblClick, px, plate.canvas().mapToGlobal(px), Qt::LeftButton,
                      Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&plate.canvas(), &twice);
    EXPECT_EQ(plate.kept().size(), 2u);
}

TEST(Vents, a_drill_is_chosen_from_the_shops) {
    Plate plate;
    plate.hand.click(plate.vents()[plate.over_a_pocket()].at);
    plate.action("vents.drill").trigger();
    QMenu* menu = nullptr;
    for (auto* one : plate.desk.window.findChildren<QMenu*>())
        if (one->title() == "Drill bit of the vent") menu = one;
    ASSERT_NE(menu, nullptr);
    const auto sizes = menu->actions();
    const auto four =
        std::find_if(sizes.begin(), sizes.end(), [](auto* one) { return one->text() == "4 mm"; });
    ASSERT_NE(four, sizes.end());
    (*four)->trigger();
    menu->close();
    ASSERT_EQ(plate.kept().size(), 1u);
    EXPECT_EQ(plate.kept().front().diameter_mm, 4);
}

TEST(Vents, tab_goes_through_them_and_on_to_the_next_pane) {
    Plate plate;
    plate.canvas().setFocus();
    for (std::size_t i = 0; i < plate.vents().size(); ++i) {
        plate.hand.key(Qt::Key_Tab);
        EXPECT_EQ(plate.canvas().vent_chosen(), i);
    }
    plate.hand.key(Qt::Key_Tab);
    EXPECT_EQ(plate.canvas().vent_chosen(), plate.vents().size() - 1);
}

TEST(Vents, an_answer_that_comes_while_one_is_dragged_does_not_take_it_away) {
    Plate plate;
    const shape::Vec from = plate.vents()[plate.over_a_pocket()].at;
    const shape::Vec to = from + shape::Vec{12, 0};
    plate.hand.drag(from, to); // begins another answer
    plate.hand.press(to);
    plate.hand.drag_on(to, to + shape::Vec{0, 12});
    plate.answer();
    plate.hand.move(to + shape::Vec{0, 15});
    plate.hand.release(to + shape::Vec{0, 15});
    ASSERT_EQ(plate.kept().size(), 1u);
    EXPECT_TRUE(plate.vent_at({std::round(to.x), std::round(to.y) + 15}));
}

TEST(Vents, pockets_on_the_plan_keep_their_own_keys) {
    Plate plate;
    plate.hand.click(plate.vents().front().at);
    plate.desk.window.sheets().show_sheet(SheetId::drawer_plan);
    EXPECT_FALSE(plate.action("edit.delete").isEnabled()) << "what is not seen is not deleted";
    const auto subject = job::subject_of(plate.drawer().pockets.front());
    plate.desk.window.selection().choose_pockets({subject});
    plate.action("edit.delete").trigger();
    EXPECT_EQ(job::find_pocket(plate.document().job(), subject).pocket, nullptr);
    EXPECT_TRUE(plate.kept().empty());
}

} // namespace
} // namespace drawercast::app
