// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/catalog.h"

#include "app_forms/look.h"
#include "app_forms/operate.h"
#include "forms/minimums_form.h"
#include "forms/shop_form.h"

#include <QTabWidget>
#include <gtest/gtest.h>

namespace drawercast::app {
namespace {

using test::field;
using test::type;

TEST(ShopForm, gives_back_what_it_was_given) {
    test::dressed_application();
    job::Shop shop;
    shop.temperature_c = 21.123456789;
    shop.altitude_m = 1609.344;
    shop.mixer_ml = 5000;
    shop.pour_s = 40;
    shop.drills_mm = {2, 2.123456, 3};
    shop.scale_step_g = 0.123456, shop.opens_h = 7.123456, shop.closes_h = 15.5;
    shop.hour_price = 48.123456, shop.margin = 0.123456;
    shop.boards = {{}};
    shop.boards[0].unknown = {{"y", "2"}};
    shop.supplies = {{job::Supply::glue, 500.123456, 9, 120, {{"z", "3"}}}};
    shop.unknown = {{"x", "1"}};
    for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch, job::DisplayUnits::inch_32}) {
        FormContext context;
        context.units = units;
        EXPECT_EQ(ShopForm(shop, context).value(), shop);
    }
}

TEST(ShopForm, is_typed_in_the_jobs_units_or_others) {
    test::dressed_application();
    FormContext context;
    context.units = job::DisplayUnits::inch;
    ShopForm form({}, context);
    test::open(form);
    type(form, "Temperature", "68");
    type(form, "Altitude", "1000 m");
    type(form, "People who mix", "2");
    type(form, "Mixer takes", "5 gal");
    type(form, "Drills at hand, in", "1/8; 3/16; 4 mm");
    ASSERT_TRUE(form.value().has_value());
    EXPECT_NEAR(form.value()->temperature_c, 20, 1e-9);
    EXPECT_EQ(form.value()->altitude_m, 1000);
    EXPECT_EQ(form.value()->people, 2);
    EXPECT_NEAR(*form.value()->mixer_ml, 18927.05892, 1e-6); // 5 gal of 231 in³
    EXPECT_EQ(form.value()->drills_mm, (std::vector<double>{3.175, 4.7625, 4}));
    type(form, "Mixer takes", "");
    EXPECT_FALSE(form.value()->mixer_ml.has_value());
    type(form, "Opens at", "17");
    type(form, "Closes at", "9");
    EXPECT_FALSE(form.value().has_value()); // closes before it opens
    type(form, "Opens at", "6.5");
    type(form, "Markup", "25");
    type(form, "An hour costs", "52");
    type(form, "Scale's step", "5");
    ASSERT_TRUE(form.value().has_value());
    EXPECT_EQ(form.value()->opens_h, 6.5);
    EXPECT_EQ(form.value()->closes_h, 9);
    EXPECT_EQ(form.value()->margin, 0.25);
    EXPECT_EQ(form.value()->hour_price, 52);
    EXPECT_EQ(form.value()->scale_step_g, 5);
    type(form, "Drills at hand, in", "1/8; x");
    EXPECT_FALSE(form.value().has_value());
    EXPECT_EQ(form.problems().front().field, &field(form, "Drills at hand, in"));
    type(form, "Drills at hand, in", "1/8; 0");
    EXPECT_FALSE(form.value().has_value()); // the reader's range
}

QAbstractItemView& table(QWidget& form, const char* name) {
    return dynamic_cast<QAbstractItemView&>(field(form, name));
}

TEST(ShopForm, boards_are_measured_and_packages_priced) {
    test::dressed_application();
    ShopForm form({}, {});
    test::open(form);
    auto& pages = *form.findChild<QTabWidget*>();
    EXPECT_TRUE(form.value()->boards.empty()); // the built-in list stays that
    pages.setCurrentIndex(1);
    test::type_cell(table(form, "Boards"), 1, 1, "15.7");
    test::type_cell(table(form, "Boards"), 1, 5, "2");
    const auto shop = form.value();
    ASSERT_TRUE(shop && shop->boards.size() == job::builtin_boards().size());
    EXPECT_EQ(shop->boards[1].thickness_mm, 15.7);
    EXPECT_EQ(shop->boards[1].at_hand, 2);
    EXPECT_EQ(shop->boards[0], job::builtin_boards()[0]);
    EXPECT_TRUE(shop->tubes.empty() && shop->closures.empty());
    QTest::keyClick(&table(form, "Boards"), Qt::Key_Insert); // one like it, whose name is taken
    EXPECT_FALSE(form.value().has_value());
    test::type_cell(table(form, "Boards"), 2, 0, "Offcuts 16");
    ASSERT_TRUE(form.value().has_value());
    EXPECT_EQ(form.value()->boards[2].name, "Offcuts 16");
    pages.setCurrentIndex(4);
    auto& supplies = table(form, "What is used up");
    EXPECT_FALSE(supplies.model()->flags(supplies.model()->index(0, 0)) & Qt::ItemIsEditable);
    test::type_cell(supplies, 4, 1, "750");
    test::type_cell(supplies, 4, 2, "8.5");
    EXPECT_EQ(form.value()->supplies, (std::vector<job::SupplyPack>{{job::Supply::glue, 750, 8.5, 0, {}}}));
    test::type_cell(supplies, 4, 1, "0");
    EXPECT_TRUE(form.value()->supplies.empty());
}

TEST(MinimumsForm, empty_goes_by_the_firmness) {
    test::dressed_application();
    MinimumsForm form({}, {});
    test::open(form);
    EXPECT_EQ(form.value(), job::Minimums{});
    type(form, "Wall at least", "8.5");
    type(form, "Floor at least", "1/2 in");
    ASSERT_TRUE(form.value().has_value());
    EXPECT_EQ(form.value()->wall_mm, 8.5);
    EXPECT_EQ(form.value()->floor_mm, 12.7);
    type(form, "Wall at least depth over", "0");
    EXPECT_FALSE(form.value().has_value());
}

TEST(SmallForms, every_field_has_a_name_and_is_reached_by_tab) {
    test::dressed_application();
    ShopForm shop({}, {});
    test::open(shop);
    for (int page = 0; page < 5; ++page) {
        shop.findChild<QTabWidget*>()->setCurrentIndex(page);
        test::expect_named_and_reached_by_tab(shop);
    }
    MinimumsForm minimums({}, {});
    test::open(minimums);
    test::expect_named_and_reached_by_tab(minimums);
}

TEST(SmallForms, are_seen_whole_in_each_theme_and_unit) {
    for (const bool dark : {false, true}) {
        const auto theme = dark ? theme::dark_theme() : theme::light_theme();
        test::dressed_application(theme);
        for (const auto units : {job::DisplayUnits::mm, job::DisplayUnits::inch_32}) {
            FormContext context;
            context.units = units;
            const QString end = QStringLiteral("-%1-%2").arg(dark ? "dark" : "light").arg(int(units));
            ShopForm shop({}, context);
            test::open(shop);
            EXPECT_LE(shop.height(), 730);
            EXPECT_LE(shop.width(), 1366);
            test::expect_seen(shop, theme, QStringLiteral("shop") + end);
            for (int page = 1; page < 5; ++page) {
                shop.findChild<QTabWidget*>()->setCurrentIndex(page);
                test::expect_seen(shop, theme, QStringLiteral("shop%1").arg(page) + end);
            }
            MinimumsForm minimums({}, context);
            test::open(minimums);
            test::expect_seen(minimums, theme, QStringLiteral("minimums") + end);
        }
    }
}

} // namespace
} // namespace drawercast::app
