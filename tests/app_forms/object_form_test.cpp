// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/level_edit.h"
#include "forms/number_table.h"
#include "forms/object_form.h"
#include "forms/part_tabs.h"
#include "forms/row_note.h"
#include "forms/table_edit.h"

#include <QComboBox>
#include <QTableView>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

using test::field;
using test::type;

job::Object data_logger() {
    job::Object object = blank_object();
    object.id = "i3";
    object.name = "Data logger";
    object.mass_g = 640;
    object.height_mm = 70;
    object.unknown = {{"color", "\"gray\""}};
    object.levels = {{job::Sunk{shape::Rectangle{140, 90, 6}, 45}, {}, {}},
                     {job::Sunk{shape::Capsule{60, 28}, 20}, {{0, 52}, 0}, {}}};
    return object;
}

TEST(ObjectForm, gives_back_what_it_was_given) {
    test::dressed_application();
    job::Object everything = data_logger();
    everything.fit_mm = -0.123456;
    everything.fit_end_mm = 0.333333;
    everything.turns = job::Turns::free;
    everything.volume_ml = 123.456;
    everything.note = "two\nlines";
    everything.levels.push_back({job::Lying{{{40, 20}, {60.123456, 30}}, 3}, {{1, 2}, 90}, {{"x", "1"}}});
    everything.levels.push_back(
        {job::Through{shape::Polygon{{{{0, 0}, 0}, {{30, 0}, 4}, {{30, 20}, 0}, {{0, 20}, -2}}}}, {}, {}});
    for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch, job::DisplayUnits::inch_32}) {
        FormContext context;
        context.units = units;
        ObjectForm form(ObjectForm::Purpose::change, everything, context);
        EXPECT_TRUE(form.problems().empty());
        EXPECT_EQ(form.value(), everything);
    }
}

TEST(ObjectForm, each_way_to_turn_has_its_words) {
    test::dressed_application();
    job::Object object = data_logger();
    for (const auto turns : {job::Turns::quarter, job::Turns::half, job::Turns::free, job::Turns::none}) {
        object.turns = turns;
        ObjectForm form(ObjectForm::Purpose::change, object, {});
        EXPECT_EQ(form.value(), object);
    }
}

TEST(ObjectForm, a_new_object_is_filled_in_by_keys_alone) {
    test::dressed_application();
    ObjectForm form(ObjectForm::Purpose::add, blank_object(), {});
    test::open(form);
    EXPECT_FALSE(form.value().has_value());
    EXPECT_FALSE(test::take_button(form).isEnabled());
    const QPoint before = field(form, "Depth").mapTo(&form, QPoint());
    EXPECT_FALSE(field(form, "Name").accessibleDescription().isEmpty()) << "what is missing is told";
    type(form, "Name", "Wind vane");
    EXPECT_EQ(field(form, "Depth").mapTo(&form, QPoint()), before) << "nothing jumps under the pointer";
    type(form, "Mass of one", "120 g");
    EXPECT_EQ(field(form, "Height").accessibleDescription(), QString("To fill in")) << "0 is none";
    type(form, "Height", "3 cm");
    type(form, "Length, along x", "4 in");
    type(form, "Width, along y", "50");
    type(form, "Depth", "20");
    ASSERT_TRUE(form.value().has_value());
    EXPECT_TRUE(test::take_button(form).isEnabled());
    EXPECT_EQ(form.value()->name, "Wind vane");
    EXPECT_EQ(form.value()->height_mm, 30);
    EXPECT_EQ(form.value()->levels.front().form,
              (decltype(job::Level::form)(job::Sunk{shape::Rectangle{101.6, 50, 0}, 20})));
    QTest::keyClick(&form, Qt::Key_Return);
    EXPECT_EQ(form.result(), QDialog::Accepted);
}

TEST(ObjectForm, a_free_outline_of_no_size_yet_has_no_corners) {
    test::dressed_application();
    ObjectForm form(ObjectForm::Purpose::add, blank_object(), {});
    test::open(form);
    auto& kind = dynamic_cast<QComboBox&>(field(form, "Shape"));
    kind.setFocus();
    QTest::keyClick(&kind, Qt::Key_Home);
    for (int i = 0; i < 4; ++i) QTest::keyClick(&kind, Qt::Key_Down);
    EXPECT_EQ(form.findChild<NumberTable*>()->rowCount(), 0);
    type(form, "Name", "Wrench");
    type(form, "Height", "12");
    type(form, "Depth", "10");
    ASSERT_EQ(form.problems().size(), 1U);
    EXPECT_EQ(form.problems().front().label, QString("Corners"));
}

TEST(ObjectForm, says_beside_the_field_what_is_to_mend) {
    test::dressed_application();
    ObjectForm form(ObjectForm::Purpose::change, data_logger(), {});
    test::open(form);
    type(form, "Depth", "501");
    ASSERT_EQ(form.problems().size(), 1U);
    EXPECT_EQ(form.problems().front().label, QStringLiteral("Depth"));
    EXPECT_EQ(form.problems().front().field, &field(form, "Depth"));
    EXPECT_TRUE(field(form, "Depth").accessibleDescription().contains(QStringLiteral("500")));
    EXPECT_FALSE(form.value().has_value());
    EXPECT_FALSE(test::take_button(form).isEnabled());
    QTest::keyClick(&form, Qt::Key_Return); // no way past it
    EXPECT_TRUE(form.isVisible());
    type(form, "Depth", "45");
    EXPECT_EQ(form.value(), data_logger());
}

TEST(ObjectForm, the_readers_words_stand_beside_the_field_they_are_about) {
    test::dressed_application();
    ObjectForm form(ObjectForm::Purpose::change, data_logger(), {});
    test::open(form);
    type(form, "Corner radius", "46"); // over half of 90: only the outline's reader knows
    ASSERT_EQ(form.problems().size(), 1U);
    EXPECT_EQ(form.problems().front().field, &field(form, "Corner radius"));
}

TEST(ObjectForm, leads_to_the_problem_on_another_page) {
    test::dressed_application();
    ObjectForm form(ObjectForm::Purpose::change, data_logger(), {});
    test::open(form);
    auto* levels = form.findChild<PartTabs*>();
    levels->show_page(levels->pages()[1]);
    type(form, "Depth", "deep");
    levels->show_page(levels->pages()[0]);
    EXPECT_FALSE(levels->pages()[1]->isVisible());
    QTest::mouseClick(&test::to_mend_button(form), Qt::LeftButton);
    EXPECT_TRUE(levels->pages()[1]->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), form.problems().front().field);
}

TEST(ObjectForm, another_kind_starts_from_the_same_size) {
    test::dressed_application();
    ObjectForm form(ObjectForm::Purpose::change, data_logger(), {});
    test::open(form);
    auto& kind = dynamic_cast<QComboBox&>(field(form, "Shape"));
    const auto outline = [&] { return std::get<job::Sunk>(form.value()->levels.front().form).outline; };
    const auto choose = [&](int index) {
        kind.setFocus();
        QTest::keyClick(&kind, Qt::Key_Home);
        for (int i = 0; i < index; ++i) QTest::keyClick(&kind, Qt::Key_Down);
    };
    choose(0);
    EXPECT_EQ(outline(), shape::Given(shape::Rectangle{140, 90, 0}));
    choose(2);
    EXPECT_EQ(outline(), shape::Given(shape::Circle{140}));
    choose(3);
    EXPECT_EQ(outline(), shape::Given(shape::Capsule{140, 90}));
    choose(4);
    const auto free = shape::contour_of(outline());
    ASSERT_TRUE(free.has_value());
    EXPECT_NEAR(shape::bounds(*free).width(), 140, 0.01);
    EXPECT_NEAR(shape::bounds(*free).height(), 90, 0.01);
    EXPECT_NEAR(shape::area(*free), shape::area(*shape::contour_of(shape::Capsule{140, 90})), 20);
    choose(5);
    EXPECT_TRUE(std::holds_alternative<job::Lying>(form.value()->levels.front().form));
    EXPECT_EQ(std::get<job::Lying>(form.value()->levels.front().form).cylinders,
              (std::vector<job::Cylinder>{{140, 90}}));
}

TEST(ObjectForm, corners_are_typed_in_a_table) {
    test::dressed_application();
    job::Object object = data_logger();
    object.levels = {{job::Sunk{shape::Polygon{{{{0, 0}, 0}, {{30, 0}, 0}, {{30, 20}, 0}}}, 10}, {}, {}}};
    ObjectForm form(ObjectForm::Purpose::change, object, {});
    test::open(form);
    auto& corners = dynamic_cast<TableEdit&>(field(form, "Corners"));
    QTableView& view = corners.view();
    view.setFocus();
    view.setCurrentIndex(corners.table().index(2, 0));
    QTest::keyClick(&view, Qt::Key_Insert);
    ASSERT_EQ(corners.rows().size(), 4U);
    test::type_cell(view, 3, 0, "0");
    test::type_cell(view, 1, 2, "5");
    const auto polygon =
        std::get<shape::Polygon>(std::get<job::Sunk>(form.value()->levels.front().form).outline);
    EXPECT_EQ(polygon.corners,
              (std::vector<shape::Corner>{{{0, 0}, 0}, {{30, 0}, 5}, {{30, 20}, 0}, {{0, 20}, 0}}));
    test::type_cell(view, 1, 0, "x"); // refused, told, kept
    EXPECT_EQ(corners.rows()[1].numbers[0], 30);
    EXPECT_FALSE(corners.findChild<RowNote*>()->problem().isEmpty());
    view.setCurrentIndex(corners.table().index(3, 0));
    QTest::keyClick(&view, Qt::Key_Delete);
    EXPECT_EQ(corners.rows().size(), 3U);
    test::type_cell(view, 2, 1, "0"); // all in line
    EXPECT_EQ(form.problems().size(), 1U);
    EXPECT_FALSE(form.value().has_value());
}

TEST(ObjectForm, levels_come_and_go) {
    test::dressed_application();
    ObjectForm form(ObjectForm::Purpose::change, data_logger(), {});
    test::open(form);
    test::button(form, "Take this level away").click();
    ASSERT_TRUE(form.value().has_value());
    EXPECT_EQ(form.value()->levels, (std::vector<job::Level>{data_logger().levels[1]}));
    EXPECT_FALSE(test::button(form, "Take this level away").isEnabled());
    for (int i = 0; i < 3; ++i) test::button(form, "Add a level").click();
    EXPECT_FALSE(test::button(form, "Add a level").isEnabled());
    EXPECT_FALSE(form.value().has_value()); // the new ones have no size yet
}

TEST(ObjectForm, every_field_has_a_name_and_is_reached_by_tab) {
    test::dressed_application();
    ObjectForm form(ObjectForm::Purpose::change, data_logger(), {});
    test::open(form);
    test::expect_named_and_reached_by_tab(form);
}

TEST(ObjectForm, is_seen_whole_in_each_theme_and_unit) {
    for (const bool dark : {false, true}) {
        const auto theme = dark ? theme::dark_theme() : theme::light_theme();
        test::dressed_application(theme);
        for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch_32}) {
            FormContext context;
            context.units = units;
            ObjectForm form(ObjectForm::Purpose::change, data_logger(), context);
            test::open(form);
            EXPECT_LE(form.width(), 1366);
            EXPECT_LE(form.height(), 730);
            test::expect_seen(form, theme,
                              QStringLiteral("object-%1-%2").arg(dark ? "dark" : "light").arg(int(units)));
            type(form, "Depth", "deep");
            type(form, "Fit a side", "1,500");
            test::expect_seen(
                form, theme,
                QStringLiteral("object-mend-%1-%2").arg(dark ? "dark" : "light").arg(int(units)));
        }
    }
}

} // namespace
} // namespace drawercast::app
