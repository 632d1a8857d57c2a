// SPDX-License-Identifier: GPL-3.0-or-later
#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/drawer_form.h"

#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

using test::field;
using test::type;

job::Drawer instruments() {
    job::Drawer drawer;
    drawer.id = "d1";
    drawer.name = "Instruments";
    drawer.outline = shape::Rectangle{480.123456, 360, 0};
    drawer.gap_mm = 0.25;
    drawer.obstructions = {{shape::Rectangle{30, 20, 0}, {{465, 350}, 0}, {}},
                           {shape::Circle{12}, {{20, 20}, 0}, {}}};
    drawer.pockets = {{"i1", 1, {{100, 100}, 90}, true, {}, {}}};
    drawer.unknown = {{"key", "true"}};
    return drawer;
}

TEST(DrawerForm, gives_back_what_it_was_given) {
    test::dressed_application();
    for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch, job::DisplayUnits::inch_32}) {
        FormContext context;
        context.units = units;
        DrawerForm form(DrawerForm::Purpose::change, instruments(), context);
        EXPECT_TRUE(form.problems().empty());
        EXPECT_EQ(form.value(), instruments());
    }
}

TEST(DrawerForm, sizes_and_heights_are_typed) {
    test::dressed_application();
    DrawerForm form(DrawerForm::Purpose::add, job::Drawer{}, {});
    test::open(form);
    EXPECT_FALSE(form.value().has_value());
    type(form, "Name", "Cables");
    type(form, "Length, along x", "40 cm");
    type(form, "Width, along y", "300");
    type(form, "Insert's thickness", "40");
    type(form, "Load it may carry", "55 lb");
    ASSERT_TRUE(form.value().has_value());
    EXPECT_EQ(form.value()->outline, shape::Given(shape::Rectangle{400, 300, 0}));
    EXPECT_EQ(form.value()->insert_mm, 40);
    EXPECT_NEAR(form.value()->load_kg, 24.94758035, 1e-9);
    EXPECT_FALSE(form.value()->gap_mm.has_value());
    type(form, "Gap all around", "11");
    EXPECT_FALSE(form.value().has_value());
    EXPECT_EQ(form.problems().front().label, QStringLiteral("Gap all around"));
}

TEST(DrawerForm, measured_with_a_tape) {
    test::dressed_application();
    job::Drawer drawer = instruments();
    drawer.outline = shape::Rectangle{480, 360, 0};
    DrawerForm form(DrawerForm::Purpose::change, drawer, {});
    test::open(form);
    QTest::mouseClick(&test::button(form, "Measured with a tape"), Qt::LeftButton);
    ASSERT_TRUE(form.value().has_value());
    EXPECT_EQ(form.value()->outline, drawer.outline); // starts square
    // skewed by 6: diagonals of 486 × 360 and 474 × 360, sides a little longer than it is deep
    type(form, "Front left to back right, top", "604.81");
    type(form, "Back left to front right, top", "595.21");
    type(form, "Depth at the left, top", "360.05");
    type(form, "Depth in the middle, top", "360.05");
    type(form, "Depth at the right, top", "360.05");
    ASSERT_TRUE(form.value().has_value());
    const auto inside = std::get<shape::Rectangle>(form.value()->outline);
    EXPECT_NEAR(inside.width_mm, 474, 0.11);
    EXPECT_LE(inside.width_mm, 474.01);
    EXPECT_NEAR(inside.height_mm, 360, 0.11);
    test::button(form, "At the bottom too").click();
    type(form, "Width at the back, bottom", "470");
    EXPECT_LE(std::get<shape::Rectangle>(form.value()->outline).width_mm, 470);
    type(form, "Front left to back right, top", "700");
    EXPECT_FALSE(form.value().has_value());
    ASSERT_EQ(form.problems().size(), 1U);
    EXPECT_NE(form.problems().front().field, nullptr);
}

TEST(DrawerForm, obstructions_come_and_go) {
    test::dressed_application();
    DrawerForm form(DrawerForm::Purpose::change, instruments(), {});
    test::open(form);
    test::button(form, "Take this obstruction away").click();
    ASSERT_EQ(form.value()->obstructions.size(), 1U);
    EXPECT_EQ(form.value()->obstructions[0], instruments().obstructions[1]);
    test::button(form, "Add an obstruction").click();
    ASSERT_EQ(form.value()->obstructions.size(), 2U);
    type(form, "Center from the left", "");
    EXPECT_FALSE(form.value().has_value());
    type(form, "Center from the left", "240");
    EXPECT_EQ(form.value()->obstructions[1].pose.at.x, 240);
    test::button(form, "Take this obstruction away").click();
    test::button(form, "Take this obstruction away").click();
    EXPECT_TRUE(form.value()->obstructions.empty());
}

TEST(DrawerForm, every_field_has_a_name_and_is_reached_by_tab) {
    test::dressed_application();
    DrawerForm form(DrawerForm::Purpose::change, instruments(), {});
    test::open(form);
    test::expect_named_and_reached_by_tab(form);
    QTest::mouseClick(&test::button(form, "Measured with a tape"), Qt::LeftButton);
    test::button(form, "At the bottom too").click();
    test::expect_named_and_reached_by_tab(form);
}

TEST(DrawerForm, is_seen_whole_in_each_theme_and_unit) {
    for (const bool dark : {false, true}) {
        const auto theme = dark ? theme::dark_theme() : theme::light_theme();
        test::dressed_application(theme);
        for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch_32}) {
            FormContext context;
            context.units = units;
            DrawerForm form(DrawerForm::Purpose::change, instruments(), context);
            test::open(form);
            EXPECT_LE(form.width(), 1366);
            EXPECT_LE(form.height(), 730);
            const QString end = QStringLiteral("-%1-%2").arg(dark ? "dark" : "light").arg(int(units));
            test::expect_seen(form, theme, QStringLiteral("drawer") + end);
            test::button(form, "Measured with a tape").click();
            test::expect_seen(form, theme, QStringLiteral("drawer-tape") + end);
        }
    }
}

} // namespace
} // namespace drawercast::app
