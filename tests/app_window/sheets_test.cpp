// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets of the window: each has a tab, an action and something to show; slow ones say when they are old.
#include "job/edit.h"
#include "plan/run_ticks.h"

#include "app_window/hand.h"
#include "window/cut_order.h"
#include "window/run_list.h"

#include <QPushButton>
#include <QSlider>
#include <QTest>
#include <QTreeWidget>
#include <gtest/gtest.h>

#include <set>

namespace drawercast::app {
namespace {

using test::Desktop;

TEST(Sheets, each_has_a_row_an_action_and_a_picture) {
    Desktop desk;
    test::open_with_plate_chosen(desk, {{100, 100}, {250, 180}});
    desk.window.document().building().wait();
    std::set<QByteArray> pictures;
    for (const auto& spec : sheet_specs()) {
        desk.window.actions()[spec.action]->trigger();
        QApplication::processEvents();
        EXPECT_EQ(desk.window.sheets().shown(), spec.id);
        EXPECT_TRUE(desk.window.actions()[spec.action]->isChecked()) << spec.action;
        EXPECT_FALSE(desk.window.sheets().canvas().empty()) << spec.name;
        EXPECT_FALSE(desk.window.sheets().canvas().shows_old()) << spec.name;
        EXPECT_EQ(desk.window.sheets().canvas().accessibleName(), sheet_words(spec.name));
        const QImage image = desk.window.sheets().canvas().grab().toImage();
        pictures.insert(QByteArray(reinterpret_cast<const char*>(image.constBits()), image.sizeInBytes()));
    }
    EXPECT_EQ(pictures.size(), sheet_specs().size()) << "no two sheets look the same";
}

TEST(Sheets, an_old_answer_is_shown_as_old_until_the_new_one_is_there) {
    Desktop desk;
    test::open_with_plate_chosen(desk, {{100, 100}, {250, 180}});
    auto& document = desk.window.document();
    document.building().wait();
    auto& canvas = desk.window.sheets().canvas();
    desk.window.sheets().show_sheet(SheetId::air_map);
    const auto subject = job::subject_of(document.job().drawers.front()->pockets.front());
    document.commit("Move", job::moved(document.job(), {subject}, {1, 0}));
    EXPECT_TRUE(canvas.shows_old());
    EXPECT_FALSE(canvas.empty()) << "the old answer stays in sight";
    desk.window.sheets().show_sheet(SheetId::drawer_plan);
    EXPECT_FALSE(canvas.shows_old()) << "the plan is always of what is shown";
    desk.window.sheets().show_sheet(SheetId::air_map);
    document.building().wait();
    EXPECT_FALSE(canvas.shows_old());
}

TEST(Sheets, every_cut_is_listed_in_order_and_led_to) {
    Desktop desk;
    test::open_with_plate_chosen(desk, {{100, 100}, {250, 180}});
    auto& document = desk.window.document();
    document.building().wait();
    auto* list = desk.window.sheets().findChild<CutOrder*>();
    ASSERT_NE(list, nullptr);
    desk.window.sheets().show_sheet(SheetId::drawer_plan);
    EXPECT_FALSE(list->isVisible());
    desk.window.sheets().show_sheet(SheetId::box_and_cuts);
    QApplication::processEvents();
    ASSERT_TRUE(list->isVisible());
    auto* rows = list->findChild<QTreeWidget*>();
    const auto& boards = document.last_built()->stock->cuts.boards;
    int sheet = 0;
    for (std::size_t board = 0; board < boards.size(); ++board)
        for (std::size_t index = 0; index < boards[board].sheets.size(); ++index, ++sheet) {
            const auto* head = rows->topLevelItem(sheet);
            const auto& cuts = boards[board].sheets[index].cuts;
            ASSERT_EQ(head->childCount(), static_cast<int>(cuts.size()));
            for (int i = 0; i < head->childCount(); ++i)
                EXPECT_EQ(head->child(i)->text(0), QString::number(i + 1));
        }
    ASSERT_EQ(rows->topLevelItemCount(), sheet);
    auto& canvas = desk.window.sheets().canvas();
    const double before = canvas.reduction();
    rows->setFocus();
    rows->setCurrentItem(rows->topLevelItem(0)->child(3));
    QTest::keyClick(rows, Qt::Key_Down);
    const auto place =
        sheets::place_of_cut(document.last_built_job(), *document.last_built()->stock, "d1", {0, 0, 4});
    EXPECT_LT(canvas.reduction(), before);
    const QRectF view(QPointF(0, 0), canvas.view_size());
    for (const shape::Vec end : {place.min, place.max})
        EXPECT_TRUE(view.contains(canvas.view().to_px(end))) << "the cut is in sight from end to end";
}

TEST(Sheets, what_cannot_be_drawn_says_so) {
    Desktop desk;
    test::open_with_plate_chosen(desk, {}); // an object of which there are none, and an empty drawer
    desk.window.document().building().wait();
    for (const auto& spec : sheet_specs()) { // whatever is there to draw: nothing fails, the page has ink
        desk.window.sheets().show_sheet(spec.id);
        const QImage image = desk.window.sheets().canvas().grab().toImage();
        const QRgb paper = image.pixel(image.width() / 2, 40);
        bool ink = false;
        for (int y = 5; y < image.height() - 5 && !ink; ++y)
            for (int x = 5; x < image.width() - 5 && !ink; ++x) ink = image.pixel(x, y) != paper;
        EXPECT_TRUE(ink) << spec.name;
    }
}

TEST(Sheets, the_build_up_is_turned_and_taken_apart_by_keys_mouse_and_slider) {
    Desktop desk;
    test::open_with_plate_chosen(desk, {{60, 60}, {150, 60}});
    desk.window.document().building().wait();
    desk.window.sheets().show_sheet(SheetId::build_up);
    auto& canvas = desk.window.sheets().canvas();
    const auto picture = [&] { return canvas.grab().toImage(); };
    EXPECT_EQ(canvas.look(), (buildup::Look{45, 0}));
    const QImage closed = picture();
    QTest::keyClick(&canvas, Qt::Key_Right);
    EXPECT_EQ(canvas.look().turn_deg, 60);
    EXPECT_NE(picture(), closed);
    QTest::keyClick(&canvas, Qt::Key_Left);
    EXPECT_EQ(picture(), closed) << "turned back it is the same";

    auto* slider = desk.window.sheets().findChild<QSlider*>();
    ASSERT_NE(slider, nullptr);
    EXPECT_TRUE(slider->isVisible());
    slider->setFocus();
    QTest::keyClick(slider, Qt::Key_End);
    EXPECT_EQ(canvas.look().apart, 1);
    QTest::keyClick(&canvas, Qt::Key_Down);
    EXPECT_NEAR(canvas.look().apart, 0.9, 1e-9);
    EXPECT_EQ(slider->value(), 18) << "the slider follows";

    const QPoint middle = canvas.rect().center();
    QTest::mousePress(&canvas, Qt::LeftButton, {}, middle);
    QTest::mouseMove(&canvas, middle + QPoint(-60, 0));
    QTest::mouseRelease(&canvas, Qt::LeftButton, {}, middle + QPoint(-60, 0));
    EXPECT_EQ(canvas.look().turn_deg, 15) << "two steps";
    desk.window.actions()["mold.turn_left"]->trigger();
    desk.window.actions()["mold.turn_left"]->trigger();
    EXPECT_EQ(canvas.look().turn_deg, 345);
    EXPECT_TRUE(desk.window.document().undo_stack().isClean()) << "looking changes no job";

    desk.window.sheets().show_sheet(SheetId::drawer_plan);
    EXPECT_FALSE(slider->isVisible());
    EXPECT_FALSE(desk.window.actions()["mold.turn_left"]->isEnabled());
}

TEST(Sheets, the_run_sheet_is_ticked_by_keys_and_each_tick_is_one_undo) {
    Desktop desk;
    test::open_with_plate_chosen(desk, {{60, 60}, {150, 60}});
    auto& document = desk.window.document();
    document.building().wait();
    desk.window.sheets().show_sheet(SheetId::run_sheet);
    auto* list = desk.window.sheets().findChild<RunList*>();
    ASSERT_TRUE(list->isVisible());
    auto* rows = list->findChild<QTreeWidget*>();
    ASSERT_GT(rows->topLevelItemCount(), 10);
    QTreeWidgetItem* pour = nullptr;
    for (int i = 0; i < rows->topLevelItemCount(); ++i)
        if (rows->topLevelItem(i)->childCount() > 0) pour = rows->topLevelItem(i);
    ASSERT_NE(pour, nullptr) << "the pour has gates";
    EXPECT_TRUE(pour->child(pour->childCount() - 1)->text(0).contains("part A"))
        << "what it needs, with its quantity";
    EXPECT_EQ(pour->child(0)->toolTip(0), pour->child(0)->text(0)) << "whole, however narrow the window";

    rows->setFocus();
    rows->setCurrentItem(pour->child(0));
    QTest::keyClick(rows, Qt::Key_Space);
    ASSERT_EQ(document.job().log.size(), 1U);
    EXPECT_FALSE(document.building().busy()) << "a tick changes no figure";
    EXPECT_TRUE(plan::is_ticked(document.job().log, document.job().log.front().step));
    QTest::keyClick(rows, Qt::Key_Down);
    EXPECT_EQ(rows->currentItem(), pour->child(1)) << "a tick keeps the place";
    QTest::keyClick(rows, Qt::Key_Space);
    EXPECT_EQ(document.job().log.size(), 2U);
    document.undo_stack().undo();
    EXPECT_EQ(pour->child(0)->checkState(0), Qt::Checked);
    EXPECT_EQ(pour->child(1)->checkState(0), Qt::Unchecked);
    document.building().wait();
    QTest::mouseClick(list->findChild<QPushButton*>(), Qt::LeftButton);
    EXPECT_EQ(pour->child(0)->checkState(0), Qt::Unchecked);
    document.undo_stack().undo();
    EXPECT_EQ(pour->child(0)->checkState(0), Qt::Checked);
    desk.window.sheets().show_sheet(SheetId::drawer_plan);
    EXPECT_FALSE(list->isVisible());
}

TEST(Sheets, a_chosen_check_opens_the_sheet_it_lies_on) {
    layout::Check check;
    check.code = layout::Code::wall_thin;
    check.frame = layout::CheckFrame::drawer;
    EXPECT_EQ(sheet_of(check), SheetId::drawer_plan);
    check.code = layout::Code::air_pocket_unvented;
    check.frame = layout::CheckFrame::mold;
    EXPECT_EQ(sheet_of(check), SheetId::air_map);
    check.code = layout::Code::stock_short;
    check.frame = layout::CheckFrame::none;
    EXPECT_EQ(sheet_of(check), SheetId::box_and_cuts);
    for (const layout::Code code : layout::all_codes()) { // of the mold's wood, wherever it is
        const std::string name(layout::text_of(code));
        check.code = code;
        if (name.starts_with("plate-") || name.starts_with("screw-") || name.starts_with("closure")) {
            EXPECT_EQ(sheet_of(check), SheetId::pressure_plate) << name;
        } else if (name.starts_with("base-") || name == "wall-bow" || name == "wall-stress") {
            EXPECT_EQ(sheet_of(check), SheetId::box_and_cuts) << name;
        }
    }
}

} // namespace
} // namespace drawercast::app
